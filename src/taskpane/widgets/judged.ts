/** What is in a number field, judged against what it expects: at once, in a sentence. */
import { type Exact, exact } from "../../core/exact/exact";
import { celsiusOf, fahrenheitOf } from "../../core/quantity/units";
import { problem } from "../../core/problem/problem";
import { quoted } from "../../core/problem/quoted";
import { say } from "../../core/problem/wording";
import { allowedWords, type Limits, misses, unitWords } from "../../core/reference/limits";
import { type DecimalMark, readTyped, withMark } from "./typed-number";

/** A number field: one fact, read by the field, its checks and its sentences. */
export interface NumberFieldFact {
  readonly label: string;
  /** Shown beside the field. */
  readonly unit: string;
  readonly limit: Limits;
  /** A few words under the label: what to type. */
  readonly hint?: string;
  /** It may stay empty. */
  readonly isOptional?: boolean;
  /** °C, and it may be typed in °F: "104 F". */
  readonly mayBeFahrenheit?: boolean;
  /** A count: no part of one. */
  readonly isWhole?: boolean;
  /** What is typed there stays from one draft to the next. */
  readonly isKept?: boolean;
}

export type Judged =
  | { readonly kind: "empty" }
  | { readonly kind: "figure"; readonly value: Exact; readonly plain: string }
  | {
      readonly kind: "wrong";
      readonly sentence: string;
      /** More digits may still put it right: "0" on the way to 0.5. Said after a pause in typing. */
      readonly mayBecomeRight: boolean;
    };

const wrong = (sentence: string, mayBecomeRight = false): Judged => ({
  kind: "wrong",
  sentence,
  mayBecomeRight,
});

/** "from 0 to 1000 mL": what to type instead. */
const expects = (fact: NumberFieldFact): string =>
  `type a number, ${allowedWords(fact.limit)}, with a point or a comma`;

const behind = /\s*°?\s*F\s*$/i;

/** @returns the figure of "104 F"; undefined where it is not in °F */
export const withoutF = (text: string): string | undefined =>
  behind.test(text) ? text.replace(behind, "") : undefined;

function judgeFahrenheit(text: string, fact: NumberFieldFact, mark: DecimalMark): Judged {
  const typed = readTyped(text, mark);
  if (typed.kind === "empty") return typed;
  const [from, to] = [fact.limit.from, fact.limit.to].map((edge) =>
    fahrenheitOf(exact(edge)).toString(),
  );
  const sentence = `${fact.label}: type a number from ${from ?? ""} to ${to ?? ""} °F.`;
  if (typed.kind !== "number") return wrong(sentence, typed.kind === "unreadable");
  // as a cell will hold it
  const value = exact(celsiusOf(typed.value).toNumber());
  return misses(value, fact.limit) === undefined
    ? { kind: "figure", value, plain: value.toString() }
    : wrong(withMark(sentence, mark), !typed.value.isNegative());
}

export function judge(text: string, fact: NumberFieldFact, mark: DecimalMark): Judged {
  const ofF = fact.mayBeFahrenheit === true ? withoutF(text) : undefined;
  if (ofF !== undefined) return judgeFahrenheit(ofF, fact, mark);
  const typed = readTyped(text, mark);
  switch (typed.kind) {
    case "empty":
      return typed;
    case "ambiguous":
      return wrong(
        `${quoted(text)} can be read as ${typed.small} or as ${typed.large}: type the one you mean.`,
      );
    case "grouped":
      return wrong(
        `${fact.label}: leave out the marks between thousands; ${withMark(expects(fact), mark)}.`,
      );
    case "too-long":
      return wrong(`${fact.label}: more digits than a cell can keep; fifteen are enough.`);
    case "unreadable":
      return wrong(
        `${fact.label}: ${quoted(text)} is not a number; ${withMark(expects(fact), mark)}.`,
        /^[+.,-]$/.test(text.trim()),
      );
    case "number":
      break;
  }
  const miss = misses(typed.value, fact.limit);
  if (miss === undefined && fact.isWhole === true && !typed.value.isInteger())
    return wrong(`${fact.label}: ${quoted(text)} is no whole number; type 1, 2, 3 and so on.`);
  if (miss === undefined) return { kind: "figure", value: typed.value, plain: typed.plain };
  const sentence = say(
    problem({
      code: "out-of-range",
      argument: fact.label,
      given: typed.value,
      unit: unitWords(fact.limit.unit),
      allowed: allowedWords(fact.limit),
      hint: (miss === "below" ? fact.limit.ifBelow : fact.limit.ifAbove) ?? "",
    }),
  );
  return wrong(withMark(sentence, mark), miss === "below" && !typed.value.isNegative());
}
