/** The lots of oil of the sample logbook: where each came from, and what its last titration says. */
import type { BookChart, BookSheet } from "../../sheet/book";
import { sampleDay } from "./entries";
import { typed } from "../tables/column";
import { lotsTable } from "../tables/lots";
import { type Entry, tableSheet } from "../tables/sheet";

const kitchens = ["North Quay", "Slipway", "Tidewheel"] as const;

const lots = lotsTable({
  guidance:
    "One row for each lot, kitchen by kitchen. Insert a new lot among those of its kitchen: the chart follows.",
  source: typed("Kitchen", 14, "Where the oil came from.", { choices: [...kitchens, "blend"] }),
});
const table = lots.name;

// prettier-ignore
const entries: readonly Entry[] = [
  { Lot: "NQ-41", Kitchen: "North Quay", Collected: sampleDay(2026, 8, 31), Litres: 120 },
  { Lot: "NQ-42", Kitchen: "North Quay", Collected: sampleDay(2026, 9, 7), Litres: 200 },
  { Lot: "NQ-43", Kitchen: "North Quay", Collected: sampleDay(2026, 9, 21), Litres: 150, Note: "Dried before titration." },
  { Lot: "SW-17", Kitchen: "Slipway", Collected: sampleDay(2026, 8, 30), Litres: 200 },
  { Lot: "SW-18", Kitchen: "Slipway", Collected: sampleDay(2026, 9, 14), Litres: 110 },
  { Lot: "SW-19", Kitchen: "Slipway", Collected: sampleDay(2026, 9, 28), Litres: 100, Note: "Waits for its titration." },
  { Lot: "TW-08", Kitchen: "Tidewheel", Collected: sampleDay(2026, 9, 6), Litres: 60, Note: "Dark oil." },
  { Lot: "TW-09", Kitchen: "Tidewheel", Collected: sampleDay(2026, 9, 14), Litres: 100, Note: "Winter drum." },
  { Lot: "BL-03", Kitchen: "blend", Collected: sampleDay(2026, 9, 23), Litres: 175, Note: "NQ-42 with SW-18, one to one by mass." },
];

const rowsAbove = 3;
const at = (heading: string): number =>
  lots.columns.findIndex((column) => column.heading === heading);

/** The rows of a kitchen, which stand together. */
function linesOf(kitchen: string) {
  const first = entries.findIndex((entry) => entry.Kitchen === kitchen);
  const rows = entries.filter((entry) => entry.Kitchen === kitchen).length;
  const column = (heading: string) => ({
    sheet: table,
    row: rowsAbove + first,
    column: at(heading),
    rows,
    columns: 1,
  });
  return {
    name: { sheet: table, row: rowsAbove + first, column: at("Kitchen") },
    across: column("Collected"),
    up: column("FFA %"),
  };
}

const chart: BookChart = {
  title: "Free fatty acid of the lots",
  description:
    "Lines of percent free fatty acid against the day of collection, one for each kitchen. Tidewheel's oil holds the most acid and rises; North Quay's the least.",
  acrossTitle: "Collected",
  upTitle: "FFA, % as oleic",
  acrossFormat: "d mmm",
  over: { row: rowsAbove + entries.length + 2, column: 0, rows: 18, columns: 8 },
  series: kitchens.map(linesOf),
};

const sheet = tableSheet(lots, entries);

export const lotsSheet: BookSheet = {
  ...sheet,
  charts: [chart],
  print: { ...sheet.print, fitToWidth: true },
};
