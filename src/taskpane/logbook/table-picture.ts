/** A picture of a logbook's table as it is understood: each column named, of a family that has one look. */
import type { RoleId } from "../../adopt/recognising/roles";
import { columnLetters } from "../../sheet/cell-name";
import { nameOf } from "./column-words";
import type { FoundTable } from "./found-table";
import { needsYou } from "./needs-you";
import { shownCell } from "./shown-cell";

const families = {
  names: ["date", "lot", "batch", "oil", "operator", "stage", "number", "lyeLot"],
  titration: [
    "titrantBase",
    "indicator",
    "molarity",
    "strength",
    "titre",
    "blank",
    "meanTitre",
    "correctedTitre",
    "sampleMass",
    "sampleVolume",
    "titreStep",
    "massStep",
    "titrantDoubt",
  ],
  acid: ["acidValue", "ffa", "ffaUncertainty", "verdict"],
  lye: [
    "base",
    "assay",
    "baseCharge",
    "acidDose",
    "reactionDose",
    "catalyst",
    "catalystRate",
    "weighed",
  ],
  unused: ["other", "note"],
} as const satisfies Readonly<Record<string, readonly RoleId[]>>;

type Family = keyof typeof families | "batch";

function familyOf(role: RoleId): Family {
  const found = Object.entries(families).find(([, roles]) =>
    (roles as readonly RoleId[]).includes(role),
  );
  return found ? (found[0] as Family) : "batch";
}

interface PicturedColumn {
  /** "K", or "3" where lots stand across. */
  readonly place: string;
  readonly heading: string;
  /** What it is taken for, with its unit: "Blank, mL"; "Not used". */
  readonly is: string;
  readonly family: Family;
  /** Nobody has said yet that it is right. */
  readonly isOpen: boolean;
  /** Its first rows, as they show. */
  readonly shown: readonly string[];
}

const rowsShown = 3;

/** The first rows that hold anything. */
function firstRows({ cells, mapping: { place, columns, left = [] } }: FoundTable): number[] {
  const found: number[] = [];
  for (let row = place.firstRow; row <= place.lastRow && found.length < rowsShown; row += 1)
    if (!left.includes(row) && columns.some(({ column }) => shownCell(cells, row, column) !== ""))
      found.push(row);
  return found;
}

function isWords(role: RoleId, unit: string | undefined): string {
  if (role === "other") return "Not used";
  const name = nameOf(role);
  return unit === undefined || name.includes(",") ? name : `${name}, ${unit}`;
}

export function pictureOf(table: FoundTable): readonly PicturedColumn[] {
  const { guess, mapping, cells, isAgreed } = table;
  const rows = firstRows(table);
  return guess.columns.map((column) => {
    const { role = "other", unit } =
      mapping.columns.find((each) => each.column === column.column) ?? {};
    return {
      place: guess.isAcross ? String(column.column + 1) : columnLetters(column.column),
      heading: column.heading,
      is: isWords(role, unit),
      family: familyOf(role),
      isOpen: !isAgreed && role === column.role && needsYou(column, guess.columns),
      shown: rows.map((row) => shownCell(cells, row, column.column, mapping.dates)),
    };
  });
}
