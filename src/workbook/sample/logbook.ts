/** The logbook of the demonstration: sample-workbooks/logbook.xlsx, and what the workbench opens with. */
import type { Book } from "../../sheet/book";
import { batches } from "../tables/batches";
import { blends } from "../tables/blends";
import { tableSheet } from "../tables/sheet";
import { titrants } from "../tables/titrants";
import { titrations } from "../tables/titrations";
import { cautionsSheet } from "./cautions-sheet";
import { batchEntries, blendEntries, titrationEntries } from "./entries";
import { lotsSheet } from "./lots-sheet";
import { checksSheet, replicatesSheet } from "./replicates";
import { startSheet } from "./start-sheet";
import { titrantEntries } from "./titrant-entries";

const start = startSheet({
  title: "The logbook of Saltmarsh Ferries",
  about:
    "A demonstration. The co-operative, its three quayside kitchens, its lots and its figures are invented: change anything.",
  steps: [
    "Open the sheet Titrations and change a titre. Corrected titre, acid value and % FFA of that row follow.",
    "Open the sheet Batches: the catalyst and the methanol of every batch of that lot follow too.",
    "A batch of several lots has a row for each in Blends, and its acid value comes from there.",
    "The sheet Titrants keeps every check of a titrant: Titrate in the pane offers the latest, and Over time draws how it drifts.",
    "The sheet Lots lists the drums and draws the acid of each kitchen's oil over time.",
    "Select a cell with a result: the pane beside the sheet shows how it was worked out.",
    "The sheet Replicates looks closely at one lot; Checks compares the arithmetic with published figures.",
    "To start a logbook of your own, press New above the sheet. Where there is no such button, open own-logbook.xlsx, which comes with the samples: it is empty.",
    "In any free cell type =TITRE. and choose a function.",
  ],
});

export const sampleLogbook = (): Book => ({
  name: "logbook",
  sheets: [
    start,
    lotsSheet,
    tableSheet(titrations, titrationEntries),
    tableSheet(batches, batchEntries),
    tableSheet(blends, blendEntries),
    tableSheet(titrants, titrantEntries),
    replicatesSheet,
    checksSheet,
    cautionsSheet,
  ],
});
