/**
 * What is wrong where in sample-workbooks/old-logbook.xlsx: the cell in which each planted mistake is
 * made. Written down by hand from the plan of the sample; figures that follow from a wrong one are not
 * listed. Rows 12, 95 and the like whose sample is typed with its unit ("10.2 g") show an error in the
 * sheet and are no mistake of arithmetic.
 */
import type { MistakeId } from "../../../src/adopt/recheck/mistakes/all";

const rows = (column: string, from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, at) => column + String(from + at));

const planted: readonly (readonly [MistakeId, readonly string[]])[] = [
  ["blank-not-subtracted", ["I19", "I20", ...rows("I", 179, 181)]],
  ["blank-added", ["I32", "I189"]],
  ["acid-by-charge", [...rows("P", 38, 43), ...rows("P", 88, 94), "P96", "P97", "P199", "P200"]],
  ["assay-not-applied", ["Q51", ...rows("Q", 138, 141), "Q199", "Q200"]],
  ["acid-left-out", ["Q52"]],
  ["other-acid", ["L59", ...rows("L", 112, 114)]],
  ["not-recognised", ["Q65"]],
  ["empty-as-zero", rows("H", 73, 76)],
  ["density-as-one", rows("O", 103, 107)],
  ["percent-as-molarity", rows("L", 118, 121)],
  ["other-gallon", rows("O", 128, 132)],
  ["assay-multiplied", ["Q146"]],
  ["percent-as-fraction", rows("P", 154, 156)],
  ["other-base", rows("P", 159, 161)],
  ["weighed-otherwise", ["S169"]],
];

/** Address and mistake, by address. */
export const oldLogbookKey: readonly string[] = planted
  .flatMap(([mistake, cells]) => cells.map((cell) => `${cell} ${mistake}`))
  .sort();

/** The one column whose guess has to be corrected: it holds the strength of the titrant. */
export const strengthColumn = 10;
