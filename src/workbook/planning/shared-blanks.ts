/**
 * One set of blanks serves all lots of a day under one titrant, and stands in the row of each. It was
 * titrated once, so it tells of the hand once. Two single blanks that are equal may well be two: they count.
 */
import type { PastTitration } from "../../core/record/usual-scatter";
import type { MolePerLitre } from "../../core/quantity/quantity";

interface OfADay extends PastTitration {
  readonly day: number | undefined;
  readonly molarity: MolePerLitre | undefined;
}

/** Rows in their order; those that have the blanks of a row before them say so. */
export function withSharedBlanks<Row extends OfADay>(rows: readonly Row[]): Row[] {
  const told = new Set<string>();
  return rows.map((row) => {
    const { day, molarity, blanks } = row;
    if (day === undefined || blanks.length < 2) return row;
    const set = [day, molarity?.toString() ?? "", ...blanks.map(String)].join(" ");
    if (told.has(set)) return { ...row, sharesBlanks: true };
    told.add(set);
    return row;
  });
}
