/** What was answered of a logbook, as rows that people can read: its own words, its days, rows left out. */
import { type Answer, emptyBlanks, emptyBlankWords } from "../answers";
import { type LogbookMapping, sizeUnits } from "../shape";
import type { DateOrder } from "../typed-date";
import type { Commas } from "../typed-number";
import { rowsText, rowsTyped } from "./left-out";

const asked = {
  unit: "how much one of these is",
  size: "how large one of these is",
  blank: "what an empty blank means",
  commas: "what the comma of 1,250 parts",
  word: "what this word means as a blank",
  dates: "order of its days",
  left: "left out",
} as const;

const dateOrders: readonly DateOrder[] = ["day first", "month first"];

const commaWords: Readonly<Record<Commas, string>> = {
  decimal: "decimals",
  thousands: "thousands",
  unsaid: "not known",
};
const answeredCommas = ["decimal", "thousands"] as const;

type SaidRow = readonly (string | number)[];

function ofAnswer(answer: Answer): SaidRow {
  if (answer.ask === "unit") return [answer.word, asked.unit, "L", answer.litres];
  if (answer.ask === "size") return [answer.word, asked.size, answer.in, answer.size];
  if (answer.ask === "commas") return ["", asked.commas, "", commaWords[answer.means]];
  const word = answer.ask === "word" ? answer.word : "";
  return [word, asked[answer.ask], "", emptyBlankWords[answer.means]];
}

/** Rows are counted as rows, where lots stand across too. */
export const saidRows = ({
  sheet,
  place,
  answers = [],
  dates,
  left,
}: LogbookMapping): readonly SaidRow[] =>
  [
    ...answers.map(ofAnswer),
    ...(dates === undefined ? [] : [["", asked.dates, "", dates]]),
    ...(left === undefined ? [] : [["", asked.left, "", rowsText(left, false)]]),
  ].map((row) => [sheet, place.headingRow + 1, "", ...row]);

/** An answer that a row remembers; undefined where its words are none. */
function answerRead(is: string, word: string, unit: string, words: string): Answer | undefined {
  if (is === asked.unit) return { ask: "unit", word, litres: words };
  const size = sizeUnits.find((each) => each === unit.trim());
  if (is === asked.size && size) return { ask: "size", word, in: size, size: words };
  const commas = answeredCommas.find((each) => commaWords[each] === words.trim());
  if (is === asked.commas && commas) return { ask: "commas", means: commas };
  const means = emptyBlanks.find((each) => emptyBlankWords[each] === words.trim());
  if (is === asked.word && means) return { ask: "word", word, means };
  return is === asked.blank && means ? { ask: "blank", means } : undefined;
}

export class SaidRead {
  private readonly answers: Answer[] = [];
  private dates: DateOrder | undefined;
  private left: readonly number[] = [];

  /** Is it such a row? */
  read(is: string, word: string, unit: string, words: string): boolean {
    const answer = answerRead(is, word, unit, words);
    if (answer) this.answers.push(answer);
    if (is === asked.dates) this.dates = dateOrders.find((each) => each === words.trim());
    if (is === asked.left) this.left = rowsTyped(words, false) ?? [];
    return answer !== undefined || is === asked.dates || is === asked.left;
  }

  all(): Pick<LogbookMapping, "answers" | "dates" | "left"> {
    const { answers, dates, left } = this;
    return {
      ...(answers.length === 0 ? {} : { answers }),
      ...(dates === undefined ? {} : { dates }),
      ...(left.length === 0 ? {} : { left }),
    };
  }
}
