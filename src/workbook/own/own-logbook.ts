/** A logbook of somebody's own, with nothing in it yet: our tables, each with one row that is not begun. */
import type { Book, BookCell, BookSheet } from "../../sheet/book";
import { cautionsSheet } from "../sample/cautions-sheet";
import { startSheet } from "../sample/start-sheet";
import { benchSheet } from "../tables/bench-sheet";
import { batches } from "../tables/batches";
import { blends } from "../tables/blends";
import { type TableShape, typed } from "../tables/column";
import { lotsTable } from "../tables/lots";
import { tableSheet } from "../tables/sheet";
import { titrants } from "../tables/titrants";
import { titrations } from "../tables/titrations";

const start = startSheet({
  title: "Your logbook",
  about: "Empty, and yours: nobody sees it unless you hand it on.",
  steps: [
    "My bench in the pane asks for what stays the same: titrant, lye, burette, balance. It keeps it on the sheet My bench, and every task begins from it. It can wait.",
    "Choose Titrate in the pane beside the sheet. It asks for titrant, oil, blank and titres, and Record fills the first row of Titrations.",
    "Or type into the pale yellow cells yourself: the results of a row show once its lot or its first titre is there.",
    "A row typed right below a table becomes part of it.",
    "Batch in the pane takes a lot's acid value from Titrations and fills a row of Batches.",
    "A batch of several lots has a row for each in Blends.",
    "Keep each titrant you make or check in Titrants: Over time then shows how it drifts.",
    "Lots lists your drums: a row each, and what its last titration says.",
    "Save keeps the file on your own machine. Keep a second copy of it somewhere else.",
  ],
});

const lots = lotsTable({
  guidance: "One row for each lot of oil.",
  source: typed("Source", 16, "Where the oil came from."),
});

/** What its formulas come to stands in the file too: programs without the add-in then show nothing there. */
function notBegun(shape: TableShape): BookSheet {
  const sheet = tableSheet(shape, [{}]);
  const withResult = (cell: BookCell | null): BookCell | null =>
    cell?.formula === undefined ? cell : { ...cell, value: "" };
  return { ...sheet, rows: sheet.rows.map((row) => row.map(withResult)) };
}

export const ownLogbook = (): Book => ({
  name: "own-logbook",
  sheets: [
    start,
    ...[titrations, batches, blends, lots, titrants].map(notBegun),
    benchSheet({}),
    cautionsSheet,
  ],
});
