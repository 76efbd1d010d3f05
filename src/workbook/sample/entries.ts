/**
 * The demo co-operative: Saltmarsh Ferries runs its boats on biodiesel from the fryers of three
 * quayside kitchens, North Quay (NQ), Slipway (SW) and Tidewheel (TW). Invented throughout.
 */
import { serialDay } from "../../sheet/serial-days";
import type { Entry } from "../tables/sheet";

/** A day as the spreadsheet counts it: days since 30 December 1899. */
export const sampleDay = serialDay;

const bench = {
  Stage: "as received",
  Oil: "used cooking oil",
  "Titrant base": "KOH",
  "Molarity mol/L": 0.0998,
  "Strength set by": "KHP",
  Indicator: "phenolphthalein",
  "Seconds held": 30,
  "Read to mL": 0.05,
  "Weighed to g": 0.01,
  "Titrant ± %": 0.5,
} as const;

const numbered = (name: string, unit: string, values: readonly (number | string)[]): Entry =>
  Object.fromEntries(values.map((value, index) => [`${name} ${index + 1} ${unit}`, value]));
const titres = (...values: number[]): Entry => numbered("Titre", "mL", values);
const blank = (...values: (number | string)[]): Entry => numbered("Blank", "mL", values);
const ownMasses = (...values: number[]): Entry => numbered("Own mass", "g", values);

// prettier-ignore
export const titrationEntries: readonly Entry[] = [
  { Date: sampleDay(2026, 9, 1), Lot: "NQ-41", Operator: "Mate", ...bench, ...titres(2.4, 2.5, 2.45), ...blank(0.15), "Mass g": 10 },
  { Date: sampleDay(2026, 9, 1), Lot: "SW-17", Operator: "Mate", ...bench, ...titres(4.85, 4.9, 4.85), ...blank(0.15), "Mass g": 10.02 },
  { Date: sampleDay(2026, 9, 8), Lot: "TW-08", Operator: "Engineer", ...bench, ...titres(3.6, 3.65, 3.6), ...blank(0.15, 0.15), "Mass g": 2.5, Note: "Dark oil: more solvent, colour hard to see." },
  { Date: sampleDay(2026, 9, 9), Lot: "NQ-42", Operator: "Mate", ...bench, ...titres(2.1, 2.3, 2.2), ...blank("neutralised"), ...ownMasses(9.52, 10.41, 9.98), Note: "Each sample weighed on its own." },
  { Date: sampleDay(2026, 9, 15), Lot: "SW-18", Operator: "Engineer", ...bench, ...titres(5.2, 5.25, 5.2, 6.1), ...blank(0.15), "Mass g": 10, Note: "Fourth titre went past pink." },
  { Date: sampleDay(2026, 9, 16), Lot: "TW-09", Operator: "Mate", ...bench, ...titres(7.95, 8, 8.05), ...blank(0.2), "Mass g": 2.51, Note: "Winter drum from the back of the store." },
  { Date: sampleDay(2026, 9, 22), Lot: "NQ-43", Operator: "Mate", ...bench, "Stage": "dried", ...titres(0.3, 0.35, 0.3), ...blank(0.2), "Mass g": 1, Note: "Blank is two thirds of the titre: take 10 g, not 1 g." },
  { Date: sampleDay(2026, 9, 23), Lot: "BL-03", Operator: "Engineer", ...bench, Stage: "blend", ...titres(3.25, 3.3, 3.25), ...blank(0.15), "Mass g": 10.01, Note: "NQ-42 with SW-18, one to one by mass." },
  { Date: sampleDay(2026, 9, 29), Lot: "SW-19", Operator: "Engineer", ...bench },
];

const lye = { Base: "KOH", "Lye lot": "K-207", "Assay %": 90, "Charge %": 0.765 } as const;

// prettier-ignore
export const batchEntries: readonly Entry[] = [
  { Date: sampleDay(2026, 9, 3), Batch: "B-112", Lots: "NQ-41", Amount: 100, Unit: "l", ...lye, "Water %": 0.04, "Weighed g": 910, "Litres made": 96, "Minutes to settle": 40, Washes: 3, "Methanol trial": "clear" },
  { Date: sampleDay(2026, 9, 4), Batch: "B-113", Lots: "SW-17", Amount: 180, Unit: "l", ...lye, "Water %": 0.05, "Weighed g": 1880, "Litres made": 168, "Minutes to settle": 75, Washes: 5, "Methanol trial": "cloudy", Seen: "Much soap in the first wash." },
  { Date: sampleDay(2026, 9, 11), Batch: "B-114", Lots: "NQ-42", Amount: 25, Unit: "uk_gal", ...lye, "Weighed g": 1027, "Litres made": 108.5, "Methanol used L": 28.9, "Minutes to settle": 35, Washes: 3, "Methanol trial": "clear" },
  { Date: sampleDay(2026, 9, 24), Batch: "B-115", Lots: "BL-03", Amount: 160, Unit: "kg", ...lye, Base: "NaOH", "Lye lot": "N-31", "Assay %": 98, "Charge %": 0.546, "Water %": 0.09, Note: "Wet: dried before the batch." },
  { Date: sampleDay(2026, 9, 25), Batch: "B-116", Lots: "TW-09", Amount: 100, Unit: "l", ...lye, Note: "Over the limit: the cell says so and gives no dose." },
  { Date: sampleDay(2026, 9, 30), Batch: "B-117", Lots: "SW-19", Amount: 100, Unit: "l", ...lye, Note: "Waits for its titration." },
  { Date: sampleDay(2026, 9, 30), Batch: "B-121", Lots: "TW-08 + NQ-41", Amount: 80, Unit: "l", ...lye, "Water %": 0.05, Note: "Two kitchens: dark oil made milder by the rest of NQ-41. Its lots stand in Blends." },
];

/** Of the batch B-121: what each kitchen gave. */
// prettier-ignore
export const blendEntries: readonly Entry[] = [
  { Batch: "B-121", Lot: "TW-08", Amount: 60, Unit: "l" },
  { Batch: "B-121", Lot: "NQ-41", Amount: 20, Unit: "l", Note: "What B-112 left in the drum." },
];
