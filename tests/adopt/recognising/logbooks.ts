/**
 * Twelve logbooks laid out differently, with headings drawn from the list. Each knows what its columns
 * are: the truth the recogniser is held to.
 */
import { headingParts } from "../../../src/adopt/recognising/heading";
import { roleOf, type RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import { makeRow, type Row } from "./figures";
import { headings, headingsOf } from "./headings";
import { seeded } from "./random";

export type Part = "tuned" | "held out" | "all";

export interface Truth {
  readonly column: number;
  readonly headingRow: number;
  readonly role: RoleId;
  readonly heading: string;
}

export interface MadeLogbook {
  readonly name: string;
  readonly cells: SheetCells;
  readonly truth: readonly Truth[];
}

interface TablePlan {
  readonly roles: readonly (RoleId | "gap")[];
  readonly row: number;
  readonly column: number;
  readonly rows: number;
}

interface Layout {
  readonly name: string;
  readonly tables: readonly TablePlan[];
  readonly title?: string;
  readonly constants?: readonly (readonly [row: number, label: string, value: number | string])[];
  readonly unitsRow?: boolean;
  readonly groupRow?: boolean;
  readonly commas?: boolean;
  readonly textDates?: boolean;
  readonly byVolume?: boolean;
  readonly emptyRowEvery?: number;
}

const titration: RoleId[] = [
  "date",
  "lot",
  "titre",
  "titre",
  "titre",
  "blank",
  "meanTitre",
  "correctedTitre",
  "sampleMass",
  "molarity",
  "acidValue",
  "ffa",
  "note",
];
const batches: RoleId[] = [
  "batch",
  "date",
  "lot",
  "oilAmount",
  "base",
  "assay",
  "baseCharge",
  "catalyst",
  "methanol",
  "weighed",
  "litresMade",
  "note",
];

// prettier-ignore
const layouts: readonly Layout[] = [
  { name: "headings on row 1", tables: [{ roles: titration, row: 0, column: 0, rows: 30 }] },
  { name: "headings on row 7 under a title and settings", title: "Saltmarsh Ferries oil book", constants: [[2, "KOH strength mol/L", 0.1], [3, "Assay %", 90], [4, "Base charge g/L", 7]],
    tables: [{ roles: ["number", "date", "lot", "operator", "titre", "titre", "titre", "blank", "sampleMass", "ffa", "oilAmount", "acidDose", "catalyst", "methanol"], row: 6, column: 0, rows: 25 }] },
  { name: "two tables side by side", tables: [{ roles: ["date", "lot", "titre", "titre", "blank", "sampleMass", "molarity", "acidValue", "note"], row: 1, column: 0, rows: 30 }, { roles: batches, row: 1, column: 10, rows: 18 }] },
  { name: "a row of units", unitsRow: true, tables: [{ roles: [...titration.slice(0, 12), "oilAmount", "catalyst", "methanol"], row: 2, column: 1, rows: 20 }] },
  { name: "text dates and decimal commas", commas: true, textDates: true, tables: [{ roles: titration, row: 3, column: 0, rows: 30 }] },
  { name: "hidden columns", tables: [{ roles: ["number", "operator", "date", "lot", "oil", "titrantBase", "titre", "titre", "titre", "blank", "correctedTitre", "sampleMass", "molarity", "ffa", "temperature", "note"], row: 0, column: 0, rows: 30 }] },
  { name: "one millilitre of oil and a gram a litre", byVolume: true, tables: [{ roles: ["date", "lot", "strength", "sampleVolume", "titre", "titre", "blank", "ffa", "oilAmount", "baseCharge", "catalystRate", "catalyst", "methanol", "weighed"], row: 4, column: 0, rows: 20 }] },
  { name: "batches alone", tables: [{ roles: ["batch", "date", "lot", "oilAmount", "amountUnit", "density", "oilMass", "acidValue", "base", "assay", "baseCharge", "reactionDose", "acidDose", "catalyst", "methanol", "litresMade", "note"], row: 0, column: 0, rows: 25 }] },
  { name: "words over numbered columns", groupRow: true, tables: [{ roles: titration, row: 5, column: 2, rows: 30 }] },
  { name: "one table below the other", tables: [{ roles: titration, row: 1, column: 0, rows: 15 }, { roles: batches, row: 20, column: 0, rows: 12 }] },
  { name: "an empty column within", tables: [{ roles: ["date", "lot", "oil", "gap", "titre", "titre", "titre", "blank", "sampleMass", "molarity", "ffa", "oilMass", "catalyst"], row: 2, column: 0, rows: 30 }] },
  { name: "everything in one, with empty rows", emptyRowEvery: 9, textDates: true, title: "LOG", tables: [{ roles: ["number", "date", "lot", "oil", "operator", "titre", "titre", "titre", "blank", "meanTitre", "correctedTitre", "sampleMass", "molarity", "acidValue", "ffa", "oilAmount", "oilMass", "base", "assay", "baseCharge", "acidDose", "reactionDose", "catalyst", "methanol", "weighed", "litresMade", "note"], row: 3, column: 0, rows: 40 }] },
];

const dateText = (serial: number): string => {
  const day = new Date((serial - 25_569) * 86_400_000);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${two(day.getUTCDate())}.${two(day.getUTCMonth() + 1)}.${String(day.getUTCFullYear())}`;
};

const withoutUnit = (heading: string): string => {
  const plain = heading.replace(/\s*\([^)]*\)/g, "").trim();
  return plain === "" ? heading : plain;
};

interface Written {
  readonly value: LogbookValue;
  readonly format: string;
}

function cellOf(role: RoleId, row: Row, titre: number, layout: Layout): Written {
  const held = role === "titre" ? row.titres[titre] : row[role];
  if (role === "date") {
    const serial = held as number;
    return layout.textDates
      ? { value: dateText(serial), format: "General" }
      : { value: serial, format: "dd/mm/yyyy" };
  }
  if (layout.commas && typeof held === "number" && !Number.isInteger(held)) {
    return { value: String(held).replace(".", ","), format: "@" };
  }
  return { value: held ?? "", format: "General" };
}

export function makeLogbook(index: number, part: Part, seed: number): MadeLogbook {
  const layout = layouts[index] as Layout;
  const random = seeded(seed * 100 + index);
  const rows: Written[][] = [];
  const truth: Truth[] = [];
  const put = (row: number, column: number, value: LogbookValue, format = "General"): void => {
    while (rows.length <= row) rows.push([]);
    (rows[row] as Written[])[column] = { value, format };
  };
  if (layout.title) put(0, 0, layout.title);
  for (const [row, label, value] of layout.constants ?? []) {
    put(row, 0, label);
    put(row, 1, value);
  }
  for (const table of layout.tables) {
    let titre = 0;
    const list = part === "all" ? (headings.titre ?? []) : headingsOf("titre", part);
    const titreHeading = list[Math.floor(random() * list.length)] ?? "Titre #";
    const columns: { role: RoleId; column: number; titre: number }[] = [];
    table.roles.forEach((role, at) => {
      if (role === "gap") return;
      const column = table.column + at;
      const from = part === "all" ? (headings[role] ?? []) : headingsOf(role, part);
      const drawn =
        role === "titre" ? titreHeading : (from[Math.floor(random() * from.length)] ?? role);
      const bare =
        role === "titre" && !layout.groupRow
          ? drawn.replace("##", `#${String(titre + 1)}`).replace(/#(?!\d)/, String(titre + 1))
          : drawn;
      let heading = role === "titre" && layout.groupRow ? String(titre + 1) : bare;
      if (role === "titre" && layout.groupRow && titre === 0)
        put(table.row - 1, column, drawn.replace(/\s*\(?#+\)?/g, ""));
      if (layout.unitsRow) {
        const unit = headingParts(heading).unit ?? roleOf(role).units[0];
        heading = withoutUnit(heading);
        put(table.row + 1, column, unit ?? "");
      }
      put(table.row, column, heading);
      truth.push({ column, headingRow: table.row, role, heading });
      columns.push({ role, column, titre });
      if (role === "titre") titre += 1;
    });
    let at = table.row + (layout.unitsRow ? 2 : 1);
    for (let each = 0; each < table.rows; each += 1) {
      if (layout.emptyRowEvery && each > 0 && each % layout.emptyRowEvery === 0) at += 1;
      const row = makeRow(each, random, layout.byVolume ?? false);
      for (const { role, column, titre: which } of columns) {
        const cell = cellOf(role, row, which, layout);
        put(at, column, cell.value, cell.format);
      }
      at += 1;
    }
  }
  const width = Math.max(...rows.map((row) => row.length));
  const full = rows.map((row) =>
    Array.from({ length: width }, (_, column) => row[column] ?? { value: "", format: "General" }),
  );
  return {
    name: layout.name,
    truth,
    cells: {
      sheet: "Log",
      row: 0,
      column: 0,
      values: full.map((row) => row.map(({ value }) => value)),
      formulas: full.map((row) => row.map(() => "")),
      formats: full.map((row) => row.map(({ format }) => format)),
    },
  };
}

export const layoutCount = layouts.length;
