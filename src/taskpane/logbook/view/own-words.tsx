/** Words of a logbook's own, each asked about once: "drum", an empty blank. What stays open is not checked. */
import { useMemo } from "react";
import { limits, type Limits } from "../../../core/reference/limits";
import {
  blankWordMeans,
  commasAnswered,
  type EmptyBlank,
  emptyBlankOf,
  emptyBlanks,
  emptyBlankWords,
  litresTyped,
} from "../../../adopt/recognising/answers";
import { type SizeUnit, sizeTyped } from "../../../adopt/recognising/measures/measured";
import { type Question, questionsOf } from "../../../adopt/recognising/questions";
import { rowsInWords } from "../../../adopt/recheck/reporting/unchecked";
import { type Commas, figureAndWords } from "../../../adopt/recognising/typed-number";
import { judge } from "../../widgets/judged";
import { NumberField } from "../../widgets/number-field";
import { PickList } from "../../widgets/pick-list";
import { capital } from "../../widgets/shown-number";
import { Say } from "../../widgets/say";
import type { DecimalMark } from "../../widgets/typed-number";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";

interface OwnWordsProps {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
  readonly mark: DecimalMark;
}

const litres: Limits = { ...limits.amount, unit: "L", to: "100000" };

const sizes: Readonly<Record<SizeUnit, { readonly of: string; readonly hint: string }>> = {
  mL: { of: "", hint: "Count how many fill 1 mL: at 20 drops one is 0.05 mL." },
  g: { of: " of lye", hint: "Weigh one, filled as you fill it." },
  L: { of: " of oil", hint: "Fill one with water on the balance: 1 kg is 1 L." },
};
const sizeHint = (word: string, unit: SizeUnit): string =>
  unit === "mL" && word !== "drop"
    ? "Fill one with water on the balance: 1 g is 1 mL."
    : sizes[unit].hint;

type OneProps<T extends Question["ask"]> = OwnWordsProps & {
  readonly question: Extract<Question, { ask: T }>;
};

/** How large a drop is, or a cup. */
function Size({ question, table, act, mark }: OneProps<"size">) {
  const { word, in: unit, headings } = question;
  const text = sizeTyped(table.mapping, word, unit);
  const fact = {
    label: `1 ${word}${sizes[unit].of} =`,
    unit,
    limit: { ...litres, unit },
    hint: `${headings.length === 0 ? "" : `In ${headings.join(", ")}. `}${sizeHint(word, unit)}`,
  };
  return (
    <NumberField
      fact={fact}
      text={text}
      judged={judge(text, fact, mark)}
      onText={(size) => {
        act({ do: "answer", answer: { ask: "size", word, in: unit, size } });
      }}
    />
  );
}

/** “1,250” read both ways. */
function CommaAsked({ question, table, act, mark }: OneProps<"commas">) {
  const { text, rows } = question;
  const figure = figureAndWords(text)?.figure ?? text;
  return (
    <PickList<Commas>
      label={`“${text}” is`}
      value={commasAnswered(table.mapping)}
      options={[
        ["decimal", figure.replace(",", mark)],
        ["thousands", figure.replace(",", "")],
        ["unsaid", "Not known"],
      ]}
      hint={`In ${rowsInWords(rows, table.guess.isAcross)}. Not known: these rows are not checked.`}
      onPick={(means) => {
        act({ do: "answer", answer: { ask: "commas", means } });
      }}
    />
  );
}

function One({ question, table, act, mark }: OneProps<"unit" | "blank" | "word">) {
  const rows = rowsInWords(question.rows, table.guess.isAcross);
  const { mapping } = table;
  if (question.ask === "unit") {
    const { word } = question;
    const text = litresTyped(mapping, word);
    const label = word === "" ? "1 without a unit =" : `1 ${word} =`;
    const fact = { label, unit: "L", limit: litres, hint: `In ${rows}.` };
    return (
      <NumberField
        fact={fact}
        text={text}
        judged={judge(text, fact, mark)}
        onText={(typed) => {
          act({ do: "answer", answer: { ask: "unit", word, litres: typed } });
        }}
      />
    );
  }
  const offered = emptyBlanks.filter((each) => each !== "day" || question.hasDays);
  const isWord = question.ask === "word";
  const means = isWord ? blankWordMeans(mapping, question.word) : emptyBlankOf(mapping);
  return (
    <PickList<EmptyBlank>
      label={isWord ? `“${question.word}” as a blank means` : "An empty blank means"}
      value={means ?? "unknown"}
      options={offered.map((each) => [each, capital(emptyBlankWords[each])] as const)}
      hint={`In ${rows}. Not known: these rows are not checked.`}
      onPick={(picked) => {
        act({
          do: "answer",
          answer: isWord
            ? { ask: "word", word: question.word, means: picked }
            : { ask: "blank", means: picked },
        });
      }}
    />
  );
}

export function OwnWords(props: OwnWordsProps) {
  const { mapping, cells } = props.table;
  const { asked, hasDittos } = useMemo(() => questionsOf(mapping, cells), [mapping, cells]);
  return (
    <>
      {hasDittos ? <Say tone="know">Ditto marks are read as the value above them.</Say> : null}
      {asked.length === 0 ? null : (
        <section aria-label="Words of its own">
          {asked.map((question) =>
            question.ask === "commas" ? (
              <CommaAsked key={question.text} question={question} {...props} />
            ) : question.ask === "size" ? (
              <Size key={`${question.word} ${question.in}`} question={question} {...props} />
            ) : (
              <One
                key={question.ask === "blank" ? "blank" : `${question.ask} ${question.word}`}
                question={question}
                {...props}
              />
            ),
          )}
        </section>
      )}
    </>
  );
}
