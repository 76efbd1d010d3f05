/**
 * New columns at the right end of a logbook: what would be written, to be looked at before it is. Nothing
 * that stands there is touched.
 */
import { areaName, columnLetters } from "../../../sheet/cell-name";
import {
  type Block,
  type Cells,
  type Content,
  type Host,
  isFault,
  type Step,
  type Table,
} from "../../../sheet/port";
import type { LogbookMapping } from "../../../adopt/recognising/mapping";
import { address, cellAt } from "../../../sheet/address";
import { finished } from "../finished";
import type { Plan, Refusal, Remark } from "../plan";
import { plannedCell } from "../planned-cell";
import { read } from "../read";
import { refused } from "../../../sheet/refusal";
import { refusal } from "../refusal";

/** From the headings to the last row, as many columns as are added. */
const blockFor = ({ sheet, place }: LogbookMapping, columns: number): Block => ({
  sheet,
  row: place.headingRow,
  column: place.lastColumn + 1,
  rows: place.lastRow - place.headingRow + 1,
  columns,
});

const isHeld = (cells: Cells, row: number, column: number): boolean =>
  cells.values[row]?.[column] !== "" || (cells.formulas[row]?.[column] ?? "") !== "";

/** The first cell that is in the way. */
function inTheWay(cells: Cells): string | undefined {
  const { block } = cells;
  for (let row = 0; row < block.rows; row += 1) {
    for (let column = 0; column < block.columns; column += 1) {
      if (isHeld(cells, row, column))
        return address(cellAt(block.sheet, block.row + row, block.column + column));
    }
  }
  return undefined;
}

/** Which table of the program the logbook is, if it is one. */
async function tableAt(
  host: Host,
  { sheet, place }: LogbookMapping,
): Promise<Table | undefined | Refusal> {
  const found = await read(host, [{ ask: "names" }]);
  if (isFault(found)) return refusal(found);
  const known = found[0].tables;
  if (known.length === 0) return undefined;
  const answers = await read(
    host,
    known.map((name) => ({ ask: "table", name }) as const),
  );
  if (isFault(answers)) return refusal(answers);
  return answers.find(
    (each): each is Table =>
      each.kind === "table" &&
      each.block.sheet === sheet &&
      each.block.row === place.headingRow &&
      each.block.column === place.firstColumn,
  );
}

/** A column that is to stand at the right end of a logbook. */
export interface NewColumn {
  readonly heading: string;
  /** In characters. */
  readonly width: number;
  /** The logbook has a column of that kind already. */
  readonly isThere?: boolean;
  /** What stands in a row of the logbook, counted from 0. */
  readonly content: (row: number) => Content;
}

interface Words {
  /** "add the columns" */
  readonly what: string;
  /** What the rows hold: "one formula each, the same in rows 8 to 20". */
  readonly holds: string;
}

function contentOf(column: NewColumn, row: number, { place }: LogbookMapping): Content {
  if (row === place.headingRow) return { kind: "value", value: column.heading };
  return row < place.firstRow ? { kind: "keep" } : column.content(row);
}

function remarksOf(table: Table | undefined, added: readonly NewColumn[]): Remark[] {
  const again = added.filter(({ isThere }) => isThere).map(({ heading }) => heading);
  return [
    ...(again.length === 0
      ? []
      : [
          {
            sentence: `The logbook has a column of that kind already (${again.join("; ")}): it stays as it is, and the new one stands beside it.`,
          },
        ]),
    ...(table
      ? [
          {
            sentence: `The table ${table.name} grows to the right by ${added.length === 1 ? "one column" : `${String(added.length)} columns`}.`,
          },
        ]
      : []),
  ];
}

export async function planBeside(
  host: Host,
  mapping: LogbookMapping,
  added: readonly NewColumn[],
  { what, holds }: Words,
): Promise<Plan | Refusal> {
  const table = await tableAt(host, mapping);
  if (table && "sentence" in table) return table;
  if (table?.isFiltered)
    return refused(
      `Some rows of the table ${table.name} are hidden by a filter. Take the filter off, then look again.`,
    );
  if (table?.hasTotals)
    return refused(
      `The table ${table.name} has a row of totals: columns are not added beside it. Take the row off, then look again.`,
    );
  const block = blockFor(mapping, added.length);
  const found = await read(host, [{ ask: "cells", block }]);
  if (isFault(found)) return refusal(found);
  const held = inTheWay(found[0]);
  if (held !== undefined)
    return refused(
      `${held} is in the way: the new columns go to the right of the logbook, into empty cells. Insert ${String(added.length)} empty columns there, or choose fewer.`,
    );
  const contents = Array.from({ length: block.rows }, (_, at) =>
    added.map((offer) => contentOf(offer, block.row + at, mapping)),
  );
  const planned = contents.flatMap((row, at) =>
    row.flatMap((content, column) => {
      const offer = added[column];
      if (!offer || content.kind === "keep") return [];
      const cell = cellAt(mapping.sheet, block.row + at, block.column + column);
      return [plannedCell({ block: cell, heading: offer.heading, content })];
    }),
  );
  const last = columnLetters(block.column + added.length - 1);
  const steps: Step[] = [
    ...(table
      ? [
          {
            do: "grow-table",
            name: table.name,
            block: { ...table.block, columns: table.block.columns + added.length },
          } as const,
        ]
      : []),
    { do: "set-cells", block, contents },
    ...added.map(
      ({ width }, at) =>
        ({
          do: "set-width",
          sheet: mapping.sheet,
          column: block.column + at,
          characters: width,
        }) as const,
    ),
    { do: "select", block: { ...block, rows: 1, columns: 1 } },
  ];
  return finished({
    what,
    where: `${areaName(block)} of the sheet ${mapping.sheet}`,
    summary: `${String(added.length)} new ${added.length === 1 ? "column" : "columns"}, ${columnLetters(block.column)} to ${last} of the sheet ${mapping.sheet}: ${holds}.`,
    cells: planned,
    makes: [],
    remarks: remarksOf(table, added),
    block,
    table: table?.name ?? "",
    steps,
  });
}
