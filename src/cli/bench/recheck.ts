/** A logbook of many rows re-checked: 10,000 rows against the budget, and how the time grows. */
import type { LogbookMapping } from "../../adopt/recognising/mapping";
import type { RoleId } from "../../adopt/recognising/roles";
import type { LogbookValue } from "../../adopt/recognising/sheet-cells";
import { type Logbook, recheckAtOnce } from "../../adopt/recheck/recheck";
import { held, type Measure } from "./figure";
import { growthOf } from "./growth";

interface Column {
  readonly role: RoleId;
  readonly unit?: string;
}

const columns: readonly Column[] = [
  { role: "lot" },
  { role: "titre", unit: "mL" },
  { role: "titre", unit: "mL" },
  { role: "blank", unit: "mL" },
  { role: "sampleMass", unit: "g" },
  { role: "molarity", unit: "mol/L" },
  { role: "acidValue", unit: "mg KOH/g" },
  { role: "ffa", unit: "%" },
  { role: "oilMass", unit: "kg" },
  { role: "base" },
  { role: "assay", unit: "%" },
  { role: "baseCharge", unit: "%" },
  { role: "catalyst", unit: "g" },
];

const rounded = (value: number, places: number): number => Number(value.toFixed(places));

/** Three rows in seven are wrong: the blank forgotten, the assay forgotten, too much lye. */
function row(at: number): LogbookValue[] {
  const titre = 2 + (at % 160) / 50;
  const wrong = at % 7;
  const net = titre + 0.02 - (wrong === 1 ? 0 : 0.15);
  const acidValue = (56.1 * 0.1 * net) / 7.05;
  const kilograms = 50 + (at % 90);
  const pure = (kilograms * acidValue * 56.1053) / 56.1 + 10 * kilograms * 0.765;
  const lye = (pure / (wrong === 3 ? 1 : 0.9)) * (wrong === 5 ? 1.3 : 1);
  return [
    `NQ-${String(at)}`,
    rounded(titre, 2),
    rounded(titre + 0.04, 2),
    0.15,
    7.05,
    0.1,
    rounded(acidValue, 2),
    rounded((acidValue * 282) / 561, 2),
    kilograms,
    "KOH",
    90,
    0.765,
    rounded(lye, 0),
  ];
}

function logbook(rows: number): Logbook {
  const values = [
    columns.map(({ role }) => role),
    ...Array.from({ length: rows }, (_, at) => row(at)),
  ];
  const same = (content: string) => values.map((cells) => cells.map(() => content));
  const mapping: LogbookMapping = {
    sheet: "Log",
    place: {
      headingRow: 0,
      unitsRow: undefined,
      groupRow: undefined,
      firstRow: 1,
      lastRow: rows,
      firstColumn: 0,
      lastColumn: columns.length - 1,
    },
    columns: columns.map(({ role, unit }, column) => ({ column, heading: role, role, unit })),
    constants: [],
    commas: "unsaid",
  };
  const cells = { sheet: "Log", row: 0, column: 0, values, formulas: same("") };
  return { mapping, cells: { ...cells, formats: same("General") } };
}

const budgeted = 10_000;

async function run() {
  const grown = await growthOf("re-check", (rows) => {
    const book = logbook(rows);
    return () => recheckAtOnce([book]);
  });
  const [, , ten, hundred] = grown.map(({ value }) => value);
  if (ten === undefined || hundred === undefined) throw new Error("a size was not measured");
  return [
    held("re-check of 10,000 rows", (ten * budgeted) / 1e6, 2, "s"),
    held("100,000 rows against 10,000", (10 * hundred) / ten, 15, "x the time", 1),
    ...grown,
  ];
}

export const recheckOfRows: Measure = { name: "re-check", run };
