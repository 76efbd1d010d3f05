/** Looks through the workbook for cells that wait for our functions, and sorts out which may be written. */
import {
  type Block,
  type Cells,
  type Fault,
  type Found,
  type Host,
  isFault,
  type Question,
  type Sheet,
  type Table,
} from "../../sheet/port";
import { isSameFormula } from "../../sheet/formula/same-formula";
import { filledDown } from "../../xlsx/formulas/shared";
import { type Unanswered, unansweredIn } from "./unanswered";

export interface Search {
  readonly mendable: readonly Unanswered[];
  /** On a protected sheet. */
  readonly locked: readonly Unanswered[];
  /** In a table's column that holds other formulas too: writing one could fill the whole column. */
  readonly mixed: readonly Unanswered[];
  /** False when the workbook is so large that a part was not looked at. */
  readonly isWhole: boolean;
}

/** Cells that are asked for at once, and in all. */
const cellsAtOnce = 20_000;
const mostCells = 400_000;

/** A sheet's block in pieces, rows outside. */
function piecesOf(block: Block): Block[] {
  const rows = Math.max(1, Math.floor(cellsAtOnce / block.columns));
  return Array.from({ length: Math.ceil(block.rows / rows) }, (_, index) => ({
    ...block,
    row: block.row + index * rows,
    rows: Math.min(rows, block.rows - index * rows),
  }));
}

const isIn = (table: Table, cell: Block): boolean => {
  const { sheet, row, column, rows, columns } = table.block;
  return (
    sheet === cell.sheet &&
    cell.row > row &&
    cell.row < row + rows &&
    cell.column >= column &&
    cell.column < column + columns
  );
};

const columnOf = ({ block }: Table, column: number): Block => ({
  ...block,
  row: block.row + 1,
  rows: block.rows - 1,
  column,
  columns: 1,
});

/** Whether each cell of a column holds the formula above it, as filling down writes it. */
function isOneFormula({ formulas }: Cells, table: string): boolean {
  const first = formulas[0]?.[0] ?? "";
  return (
    first !== "" &&
    formulas.every(([formula = ""], down) => isSameFormula(filledDown(first, down), formula, table))
  );
}

const ask = async <K extends Found["kind"]>(
  host: Host,
  questions: readonly Question[],
  kind: K,
): Promise<Extract<Found, { kind: K }>[] | Fault> => {
  if (questions.length === 0) return [];
  const found = await host.read(questions);
  if (isFault(found)) return found;
  return found.filter((each): each is Extract<Found, { kind: K }> => each.kind === kind);
};

/** Those of the cells that stand in a table's column of more than one formula. */
async function mixedOf(
  host: Host,
  cells: readonly Unanswered[],
): Promise<ReadonlySet<Unanswered> | Fault> {
  const [names] = await asFoundList(ask(host, [{ ask: "names" }], "names"));
  const tables = await ask(
    host,
    (names?.tables ?? []).map((name): Question => ({ ask: "table", name })),
    "table",
  );
  if (isFault(tables)) return tables;
  const columns = new Map<string, { table: Table; block: Block; cells: Unanswered[] }>();
  for (const cell of cells) {
    const table = tables.find((each) => isIn(each, cell.block));
    if (!table) continue;
    const block = columnOf(table, cell.block.column);
    const key = `${table.name}/${block.column}`;
    const known = columns.get(key) ?? { table, block, cells: [] };
    columns.set(key, { ...known, cells: [...known.cells, cell] });
  }
  const all = [...columns.values()];
  const read = await ask(
    host,
    all.map(({ block }): Question => ({ ask: "cells", block })),
    "cells",
  );
  if (isFault(read)) return read;
  return new Set(
    all.flatMap(({ table, cells: found }, index) => {
      const column = read[index];
      return column && isOneFormula(column, table.name) ? [] : found;
    }),
  );
}

/** A fault where names cannot be had is as good as no tables being known: then nothing is mixed. */
async function asFoundList<T>(found: Promise<T[] | Fault>): Promise<T[]> {
  const list = await found;
  return isFault(list) ? [] : list;
}

/** What must be looked at: the errors the program finds by itself; where it finds none so, all cells. */
async function toLookAt(host: Host, sheet: Sheet): Promise<readonly Block[]> {
  if (!sheet.used) return [];
  // on a protected sheet the program does not search
  const found = sheet.isProtected
    ? []
    : await asFoundList(ask(host, [{ ask: "errors", sheet: sheet.name }], "areas"));
  const [areas] = found;
  return areas ? areas.blocks : [sheet.used];
}

/** Pieces in groups that are asked for at once. */
function together(pieces: readonly Block[]): Block[][] {
  const groups: Block[][] = [];
  let cells = Infinity;
  for (const piece of pieces) {
    const more = piece.rows * piece.columns;
    if (cells + more > cellsAtOnce) {
      groups.push([]);
      cells = 0;
    }
    groups.at(-1)?.push(piece);
    cells += more;
  }
  return groups;
}

interface Looked {
  readonly cells: readonly Unanswered[];
  readonly isWhole: boolean;
}

async function lookThrough(host: Host, sheets: readonly Sheet[]): Promise<Looked | Fault> {
  const blocks: Block[] = [];
  for (const sheet of sheets) blocks.push(...(await toLookAt(host, sheet)));
  const cells: Unanswered[] = [];
  let looked = 0;
  for (const group of together(blocks.flatMap(piecesOf))) {
    looked += group.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
    if (looked > mostCells) return { cells, isWhole: false };
    const questions = group.map((block): Question => ({ ask: "cells", block }));
    const read = await ask(host, questions, "cells");
    if (isFault(read)) return read;
    for (const each of read) cells.push(...unansweredIn(each));
  }
  return { cells, isWhole: true };
}

export async function searchUnanswered(host: Host): Promise<Search | Fault> {
  const book = await ask(host, [{ ask: "sheets" }], "sheets");
  if (isFault(book)) return book;
  const sheets = book[0]?.sheets ?? [];
  const looked = await lookThrough(host, sheets);
  if (isFault(looked)) return looked;
  const { cells, isWhole } = looked;
  const isLocked = ({ block }: Unanswered): boolean =>
    sheets.some(({ name, isProtected }) => isProtected && name === block.sheet);
  const open = cells.filter((cell) => !isLocked(cell));
  const mixed = open.length > 0 ? await mixedOf(host, open) : new Set<Unanswered>();
  if (isFault(mixed)) return mixed;
  return {
    mendable: open.filter((cell) => !mixed.has(cell)),
    locked: cells.filter(isLocked),
    mixed: [...mixed],
    isWhole,
  };
}
