/** Everything the bench measures, in the order of its table. */
import { coreRow } from "./core-row";
import type { Measure } from "./figure";
import { largeActs } from "./large-acts";
import { largePage } from "./large-page";
import { openAndSave } from "./open-and-save";
import { pageLoad } from "./page-load";
import { partnerCopy } from "./partner-copy";
import { recheckOfRows } from "./recheck";
import { sizes } from "./sizes";
import { usualScatter } from "./usual-scatter";
import { workbenchCells, workbenchGrowth } from "./workbench-cells";
import { workbenchMemory } from "./workbench-memory";

export const measures: readonly Measure[] = [
  coreRow,
  workbenchCells,
  workbenchGrowth,
  workbenchMemory,
  partnerCopy,
  recheckOfRows,
  usualScatter,
  openAndSave,
  sizes,
  pageLoad,
  largePage,
  largeActs,
];

/** Those whose names hold one of the words; all when there are none. */
export const measuresNamed = (words: readonly string[]): readonly Measure[] =>
  words.length === 0
    ? measures
    : measures.filter(({ name }) => words.some((word) => name.includes(word)));
