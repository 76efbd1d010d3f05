/** The logbook that the workbench opens with. */
import type { Book, BookCell, BookSheet } from "../book";
import { batches } from "../tables/batches";
import { tableSheet } from "../tables/sheet";
import { titrations } from "../tables/titrations";
import { cautions } from "../../core/batch/cautions";
import { checksSheet, replicatesSheet } from "./replicates";
import { batchEntries, titrationEntries } from "./entries";

const line = (value: string, style: BookCell["style"] = "words"): BookCell[] => [{ value, style }];

const start: BookSheet = {
  name: "Start here",
  rows: [
    line("The logbook of Saltmarsh Ferries", "title"),
    line(
      "A demonstration. The co-operative, its lots and its figures are invented: change anything.",
    ),
    [],
    line(
      "1. Open the sheet Titrations and change a titre. Corrected titre, acid value and % FFA follow.",
    ),
    line(
      "2. Open the sheet Batches: the catalyst and the methanol of every batch of that lot follow too.",
    ),
    line("3. Select a cell with a result: the pane beside the sheet shows how it was worked out."),
    line("4. A cell that shows #VALUE! or #N/A has a reason: select it, and the pane says it."),
    line(
      "5. The sheet Replicates looks closely at one lot; Checks compares the arithmetic with published figures.",
    ),
    line("6. In any free cell type =TITRE. and choose a function."),
    [],
    line("Mind", "heading"),
    ...cautions.map((caution) => line(caution, "caution")),
  ],
  columnWidths: [110],
  tables: [],
  frozenRows: 0,
};

export const sampleLogbook = (): Book => ({
  name: "Saltmarsh Ferries logbook",
  sheets: [
    tableSheet(titrations, titrationEntries),
    tableSheet(batches, batchEntries),
    replicatesSheet,
    checksSheet,
    start,
  ],
});
