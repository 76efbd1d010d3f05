/** Figures beside the tables that hold for all rows: "KOH strength | 0.1", "Assay % | 90". */
import { type Basis, basisNamed, hasBasis } from "./basis";
import { fromCells, fromUnit, fromWords } from "./evidence";
import type { TablePlace } from "./find-tables";
import { headingParts, unitAlone } from "./heading";
import type { ColumnFacts } from "./numbers-of-column";
import { type RoleId, roleOf } from "./roles";
import { endOf, type HeldCell, heldCell, type SheetCells } from "./sheet-cells";
import { numberFrom, type Commas } from "./typed-number";
import { unitOfColumn } from "./measures/units-of-roles";
import { baseNamed } from "../../core/reference/bases";

export interface ConstantGuess {
  readonly role: RoleId;
  readonly row: number;
  readonly column: number;
  readonly label: string;
  readonly unit: string | undefined;
  /** Of grams of lye: what the label says they are. */
  readonly basis?: Basis;
  readonly score: number;
  readonly reasons: readonly string[];
}

/** What can hold for all rows at once. */
const possible: readonly RoleId[] = [
  "molarity",
  "strength",
  "titrantBase",
  "blank",
  "sampleMass",
  "sampleVolume",
  "density",
  "base",
  "assay",
  "baseCharge",
  "amountUnit",
  "temperature",
  "oil",
];
const leastScore = 0.62;

const isInTable = (places: readonly TablePlace[], row: number, column: number): boolean =>
  places.some(
    (place) =>
      row >= place.headingRow &&
      row <= place.lastRow &&
      column >= place.firstColumn &&
      column <= place.lastColumn,
  );

const factsOf = (
  value: unknown,
  number: number | undefined,
  isPercentFormat: boolean,
): ColumnFacts => ({
  filled: 1,
  numbers: number === undefined ? [] : [number],
  dates: 0,
  texts: number === undefined && typeof value === "string" ? [value] : [],
  formula: "",
  isPercentFormat,
  different: 1,
});

function guess(label: string, { value, format }: HeldCell, commas: Commas) {
  const parts = headingParts(label);
  const number = numberFrom(value, commas)?.value;
  const facts = factsOf(value, number, typeof value === "number" && format.includes("%"));
  const scored = possible.map((id) => {
    const role = roleOf(id);
    const all = [fromWords(id, parts, label), fromUnit(role, parts), fromCells(role, parts, facts)];
    const isNamed = (all[0]?.points ?? 0) > 0;
    const sum = all.reduce((total, { points }) => total + points, 0);
    return {
      id,
      score: isNamed ? sum : 0,
      reasons: all.map((each) => each.reason).filter((r) => r !== ""),
    };
  });
  const best = scored.sort((a, b) => b.score - a.score)[0];
  return best && best.score >= leastScore ? { ...best, parts, facts } : undefined;
}

/** A label's figure stands to its right, or one further where a sign stands between. */
export function findConstants(
  cells: SheetCells,
  places: readonly TablePlace[],
  commas: Commas,
): ConstantGuess[] {
  const end = endOf(cells);
  const found: ConstantGuess[] = [];
  for (let row = cells.row; row < Math.min(end.row, cells.row + 60); row += 1) {
    for (let column = cells.column; column < end.column - 1; column += 1) {
      const { value: label } = heldCell(cells, row, column);
      if (typeof label !== "string" || label.trim() === "" || label.length > 60) continue;
      if (isInTable(places, row, column) || isInTable(places, row, column + 1)) continue;
      const cell = heldCell(cells, row, column + 1);
      const held = cell.value;
      const isFigure = numberFrom(held, commas) !== undefined;
      const isBase = typeof held === "string" && baseNamed(held) !== undefined;
      if (!isFigure && !isBase) continue;
      const beside = heldCell(cells, row, column + 2).value;
      const unit = typeof beside === "string" ? unitAlone(beside) : undefined;
      const best = guess(
        unit === undefined ? label : `${label} (${beside as string})`,
        cell,
        commas,
      );
      if (!best || found.some(({ role }) => role === best.id)) continue;
      const basis = hasBasis(best.id)
        ? basisNamed(`${label} ${typeof beside === "string" ? beside : ""}`)
        : undefined;
      found.push({
        role: best.id,
        row,
        column: column + 1,
        label: label.trim(),
        unit: unitOfColumn(best.id, best.parts, best.facts),
        ...(basis === undefined ? {} : { basis }),
        score: Math.min(1, best.score),
        reasons: best.reasons,
      });
    }
  }
  return found;
}
