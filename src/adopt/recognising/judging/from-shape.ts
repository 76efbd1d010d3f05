/**
 * What a column is by its figures alone, under a heading of which no word is known: 1, 2, 3 down the rows, a
 * mark of its own for each row, several numbered columns of readings.
 */
import type { Evidence } from "../evidence";
import type { ColumnFacts } from "../numbers-of-column";
import type { RoleId } from "../roles";

export const noShape: Evidence = { points: 0, reason: "" };

const leastRows = 4;

/** 1, 2, 3: each one more than the one above. */
const isRunning = ({ numbers, filled }: ColumnFacts): boolean =>
  numbers.length === filled &&
  numbers.every((each, at) => Number.isInteger(each) && each === (numbers[0] ?? 0) + at);

/** "B-12", "NQ41": letters, then figures. */
const mark = /^\p{L}{1,4}[-\s/.]?\d{1,6}$/u;

const isOfMarks = ({ texts, filled, different }: ColumnFacts): boolean =>
  texts.length === filled && different === filled && texts.every((text) => mark.test(text));

/** "slow to settle": three words or more, and no name of a person or a place. */
const isSaying = (text: string): boolean => /^\S+\s+\S+\s+(?:.*\s)?\p{Ll}\S*$/u.test(text.trim());

const isOfSayings = ({ texts, filled, numbers }: ColumnFacts): boolean =>
  numbers.length < filled / 3 && texts.filter(isSaying).length >= Math.max(2, filled / 4);

/** A burette holds no more, and nobody reads the same thing all the time. */
const mostRead = 60;
const isOfReadings = ({ numbers, filled, different }: ColumnFacts): boolean =>
  numbers.length >= filled * 0.7 &&
  different > filled / 3 &&
  numbers.every((each) => each > 0 && each <= mostRead);

/** @param isOneOfSeveral numbered, as other columns under the same words are */
export function fromShape(role: RoleId, facts: ColumnFacts, isOneOfSeveral: boolean): Evidence {
  if (role === "note" && isOfSayings(facts)) return { points: 0.4, reason: "words in a row" };
  if (facts.filled < leastRows) return noShape;
  if (role === "number" && isRunning(facts))
    return { points: 0.5, reason: "a number more in each row" };
  if ((role === "batch" || role === "lot") && isOfMarks(facts))
    return { points: role === "batch" ? 0.47 : 0.46, reason: "a mark of its own in each row" };
  if (role === "titre" && isOneOfSeveral && isOfReadings(facts))
    return { points: 0.2, reason: "one of several columns of readings" };
  return noShape;
}
