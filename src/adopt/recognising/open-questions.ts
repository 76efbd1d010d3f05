/** How much of a logbook is still to be said: what the arithmetic lacks, and words of its own without an answer. */
import { lacks } from "./lacks";
import type { LogbookMapping } from "./mapping";
import { isAnswered, questionsOf } from "./questions";
import type { SheetCells } from "./sheet-cells";

export const openQuestions = (mapping: LogbookMapping, cells: SheetCells): number =>
  lacks(mapping, cells).length +
  questionsOf(mapping, cells).asked.filter((each) => !isAnswered(mapping, each)).length;
