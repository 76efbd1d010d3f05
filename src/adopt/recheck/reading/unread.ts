/**
 * Cells of a row that hold something else than the figure they should: words beside it, an error. They
 * are read as nothing, never as a guess, and the row says why it is not checked.
 */
import { isSized } from "../../../core/quantity/measures";
import { quoted } from "../../../core/problem/quoted";
import type { LogbookMapping, MappedColumn } from "../../recognising/mapping";
import { isUnitUnsaid } from "../../recognising/measures/measured";
import { blankWord, isNeutralised } from "../../recognising/neutralised";
import { type RoleId, roleOf } from "../../recognising/roles";
import { heldCell, type LogbookValue, type SheetCells } from "../../recognising/sheet-cells";
import { unitAlone } from "../../recognising/heading";
import { figureAndWords, figureFrom, isEither } from "../../recognising/typed-number";

/** What cannot be worked out any more: nothing of the row, no dose of it, or this one figure. */
export type Hides = "row" | "dose" | "figure";

export interface Unread {
  /** Goes on from "not checked: ". */
  readonly why: string;
  readonly hides: Hides;
}

const hides: Readonly<Partial<Record<RoleId, Hides>>> = {
  titre: "row",
  blank: "row",
  molarity: "row",
  strength: "row",
  sampleMass: "row",
  sampleVolume: "row",
  density: "row",
  assay: "dose",
  baseCharge: "dose",
  meanTitre: "figure",
  correctedTitre: "figure",
  acidValue: "figure",
  ffa: "figure",
  oilMass: "figure",
  acidDose: "figure",
  reactionDose: "figure",
  catalyst: "figure",
  catalystRate: "figure",
  weighed: "figure",
};

const ofTitrations: readonly RoleId[] = [
  "blank",
  "molarity",
  "strength",
  "sampleMass",
  "sampleVolume",
];

/** A stroke where nothing was read. */
const nothing = /^(?:[-–—_./]+|n\/?a\.?)$/i;
const isNothing = (value: LogbookValue): boolean =>
  typeof value === "string" && (value.trim() === "" || nothing.test(value.trim()));

const named = ({ heading, role }: MappedColumn): string =>
  heading === "" ? roleOf(role).words : heading;

/** Why a text is not read; goes on from the text itself. */
export const notRead = (text: string): string =>
  isEither(text) ? "whose comma may part decimals or thousands" : "which is no figure";

/** "10 ml" in a column of grams: a figure, and of something else than its heading says. */
function otherUnit(text: string, { unit }: MappedColumn): string | undefined {
  const named = unitAlone(figureAndWords(text)?.words ?? "");
  return unit === undefined || named === unit ? undefined : named;
}

function whyOf(value: LogbookValue, column: MappedColumn): string {
  if (typeof value === "object") return `${named(column)} holds ${value.error}`;
  const text = String(value);
  const holds = `${named(column)} holds ${quoted(text)}`;
  return otherUnit(text, column) === undefined
    ? `${holds}, ${notRead(text)}`
    : `${holds}, but its column is in ${column.unit ?? ""}: put one of the two right`;
}

const hidesOf = ({ role }: MappedColumn): Hides => hides[role] ?? "figure";
const unsaidWhy = (column: MappedColumn): string =>
  isSized(column.unit)
    ? `how large one ${column.unit} of ${named(column)} is, is not said`
    : `the unit of ${named(column)} is not said`;

/**
 * What of a row is not read, and why; nothing for a row that holds no figures at all.
 * @param more what others could not read of the row
 */
export function unreadReader(
  { columns, commas }: LogbookMapping,
  cells: SheetCells,
): (row: number, more: readonly Unread[]) => readonly Unread[] {
  const titrates = columns.some(({ role }) => role === "titre");
  // Of a table that titrates nothing, only figures of the oil and of its dose count.
  const looked = columns.filter(
    ({ role }) => hides[role] !== undefined && (titrates || !ofTitrations.includes(role)),
  );
  return (row, more) => {
    let isUsed = false;
    const found = [...more];
    for (const column of looked) {
      const { value, formula } = heldCell(cells, row, column.column);
      if (isNothing(value)) continue;
      if (figureFrom(value, commas, column.unit)) {
        isUsed = true;
        if (isUnitUnsaid(column)) found.push({ why: unsaidWhy(column), hides: hidesOf(column) });
        continue;
      }
      const text = typeof value === "string" ? value : "";
      // a word where a blank should stand is asked about, and has its reason from there
      if (column.role === "blank" && (isNeutralised(text) || blankWord(text) !== "")) continue;
      // A formula filled down below the last row shows an error and means nothing.
      if (formula === "" && /\d/.test(text)) isUsed = true;
      found.push({ why: whyOf(value, column), hides: hidesOf(column) });
    }
    return isUsed ? found : [];
  };
}
