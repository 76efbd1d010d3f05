/** A small logbook that counts in drops and cups, with methanol and water beside: what its maker alone knows is asked. */
import type { Book } from "../../../src/sheet/book";

const headings = [
  "Date",
  "Lot",
  "Titre (drops)",
  "Blank (drops)",
  "Sample g",
  "KOH mol/L",
  "FFA %",
  "Oil (L)",
  "Base charge g/L",
  "KOH to add (cups)",
  "Methanol (L)",
  "Water (ppm)",
];

/** At 20 drops a millilitre and 190 g of lye a cup, 90 % of it KOH: right but for two amounts of methanol. */
const rows = [
  [46_000, "NQ-1", 48, 4, 10, 0.1, 0.62, 100, 7, 4.75, 20, 450],
  [46_003, "NQ-2", 60, 4, 10, 0.1, 0.79, 120, 7, 5.92, 24, 1500],
  [46_006, "NQ-3", 52, 4, 10, 0.1, 0.68, 100, 7, 4.81, 2, 500],
  [46_009, "NQ-4", 44, 4, 10, 0.1, 0.56, 90, 7, 4.22, 18, 900],
  [46_012, "NQ-5", 56, 4, 10, 0.1, 0.73, 110, 7, 5.36, 63, 300],
];

export const dropsBook = (): Book => ({
  name: "Drops",
  sheets: [
    {
      name: "Oil book",
      rows: [headings, ...rows].map((row) =>
        row.map((value, column) => (column === 0 ? { value, format: "yyyy-mm-dd" } : { value })),
      ),
      columnWidths: [],
      tables: [],
      frozenRows: 0,
    },
  ],
});
