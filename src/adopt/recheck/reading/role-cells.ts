/** Where a role's figure stands in a row: in its column, or in the one place that holds for all rows. */
import { columnOf, type LogbookMapping, type MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import { heldCell, type HeldCell, type SheetCells } from "../../recognising/sheet-cells";
import { isUnitUnsaid } from "../../recognising/measures/measured";
import { isUsable } from "../../recognising/typed-limits";
import { typedFigure } from "../../recognising/typed-number";
import { coarseStep } from "./coarse-step";
import { decimalsOfColumn, type HeldFigure, heldFigure } from "./held-figure";

type At = (row: number) => HeldCell | undefined;

const textOf = (cell: HeldCell | undefined): string =>
  cell === undefined || typeof cell.value === "object" ? "" : String(cell.value).trim();

const unitOf = ({ unit, times, within }: Pick<MappedColumn, "unit" | "times" | "within">) => ({
  unit,
  ...(times === undefined ? {} : { times }),
  ...(within === undefined ? {} : { within }),
});

const plain = { formula: "", format: "General" } as const;

export function roleCells(mapping: LogbookMapping, cells: SheetCells) {
  const { commas } = mapping;
  /** The cell that says a role in a row: the column's, or the one for all rows. */
  const at = (
    role: RoleId,
  ): { cell: At; unit: string | undefined; times?: number; column: number } => {
    const column = columnOf(mapping, role);
    if (column)
      return {
        cell: (row) => heldCell(cells, row, column.column),
        ...unitOf(column),
        column: column.column,
      };
    const constant = mapping.constants.find((each) => each.role === role);
    if (!constant) return { cell: () => undefined, unit: undefined, column: -1 };
    const { from } = constant;
    const held: HeldCell =
      from.kind === "cell"
        ? heldCell(cells, from.row, from.column)
        : { value: isUsable(constant) ? (typedFigure(from.value) ?? from.value) : "", ...plain };
    return { cell: () => held, ...unitOf(constant), column: -1 };
  };
  const { firstRow, lastRow } = mapping.place;
  const firstOf = (cell: At): HeldCell[] =>
    Array.from({ length: Math.min(400, lastRow - firstRow + 1) }, (_, each) =>
      cell(firstRow + each),
    ).filter((each) => each !== undefined);
  const figureAt = (role: RoleId) => {
    const { cell, column, ...inUnit } = at(role);
    const of = { role, ...inUnit };
    if (isUnitUnsaid(of)) return () => undefined;
    const ofColumn = column < 0 ? [] : firstOf(cell);
    const decimals = decimalsOfColumn(ofColumn, commas);
    const step = coarseStep(of, ofColumn, commas);
    return (row: number): HeldFigure | undefined => {
      const held = cell(row);
      return held && heldFigure(held, of, column, commas, { decimals, step });
    };
  };
  const valueAt = (role: RoleId) => {
    const figure = figureAt(role);
    return (row: number): number | undefined => figure(row)?.value;
  };
  const textAt = (role: RoleId) => {
    const { cell } = at(role);
    return (row: number): string => textOf(cell(row));
  };
  const listAt =
    (columns: readonly MappedColumn[]) =>
    (row: number): (number | undefined)[] =>
      columns.map((each) =>
        isUnitUnsaid(each)
          ? undefined
          : heldFigure(heldCell(cells, row, each.column), each, each.column, commas)?.value,
      );
  return { at, figureAt, valueAt, textAt, listAt };
}
