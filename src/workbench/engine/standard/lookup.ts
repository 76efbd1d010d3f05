/** A value found in a list, and the one that belongs to it. */
import type { Standard } from "./adapter";
import { testOf } from "./criteria";
import { doubt, doubtIfEmpty } from "./doubt";
import { compare } from "./compare";
import { number, truth } from "./convert";
import { type Cell, Fault, type Given, type Rows } from "./value";

const first = (given: Given | undefined): Cell => given?.rows[0]?.[0] ?? null;

/** Texts are found with their wildcards; an empty one looks for nothing. */
function exactly(wanted: Cell, cells: readonly Cell[]): number {
  if (wanted instanceof Fault) throw wanted;
  if (wanted === null || wanted === "" || typeof wanted === "boolean") doubt();
  if (typeof wanted === "number" && cells.some((cell) => typeof cell === "boolean")) doubt();
  if (typeof wanted === "string") {
    const test = testOf(`=${wanted}`);
    if (/\d/.test(wanted)) {
      const folded = wanted.toLowerCase();
      if (/[*?~]/.test(wanted)) doubt();
      return cells.findIndex((cell) => typeof cell === "string" && cell.toLowerCase() === folded);
    }
    return cells.findIndex((cell) => typeof cell === "string" && test(cell));
  }
  return cells.findIndex(
    (cell) => typeof cell === typeof wanted && compare(cell, wanted ?? 0, false) === 0,
  );
}

/** The last that is not beyond, of those of its kind, in a list that is in order. */
function upTo(wanted: Cell, cells: readonly Cell[], order: 1 | -1): number {
  if (wanted instanceof Fault) throw wanted;
  const key = wanted ?? 0;
  if (wanted === null || typeof wanted === "boolean") doubt();
  const alike = cells
    .map((cell, place) => ({ cell, place }))
    .filter(({ cell }) => typeof cell === typeof key);
  const inOrder = alike.every(
    ({ cell }, at) => at === 0 || order * compare(alike[at - 1]?.cell ?? null, cell) <= 0,
  );
  // what is found in a list out of order is chance
  if (!inOrder) doubt();
  if (alike.length < cells.filter((cell) => cell !== null && !(cell instanceof Fault)).length) {
    doubt();
  }
  const within = alike.filter(({ cell }) => order * compare(cell, key) <= 0);
  return within.at(-1)?.place ?? -1;
}

function place(wanted: Cell, cells: readonly Cell[], kind: number): number {
  const found = kind === 0 ? exactly(wanted, cells) : upTo(wanted, cells, kind > 0 ? 1 : -1);
  if (found < 0) throw new Fault("#N/A");
  return found;
}

const column = (rows: Rows, at: number): Cell[] => rows.map((row) => row[at] ?? null);

const turned = (rows: Rows): Rows =>
  (rows[0] ?? []).map((_, at) => rows.map((row) => row[at] ?? null));

function looked(found: Cell): Cell {
  if (found === null) doubtIfEmpty();
  return found;
}

const looking = (facing: (rows: Rows) => Rows, isAcross = false): Standard => ({
  least: 3,
  most: 4,
  kinds: "vlvv",
  work: ([wanted, table, which, kind]) => {
    const rows = facing(table?.rows ?? []);
    const at = Math.trunc(number(first(which)));
    if (at < 1 || at > (rows[0]?.length ?? 0)) {
      doubt();
      throw new Fault(at < 1 ? "#VALUE!" : "#REF!");
    }
    const isOrdered = kind === undefined ? true : truth(first(kind));
    // across a single column, one program finds nothing
    if (isAcross && isOrdered && rows.length === 1) doubt();
    const row = place(first(wanted), column(rows, 0), isOrdered ? 1 : 0);
    return looked(rows[row]?.[at - 1] ?? null);
  },
});

function within(given: Given | undefined, size: number): number {
  const at = given === undefined ? 0 : Math.trunc(number(first(given)));
  if (at < 0 || at > size) {
    doubt();
    throw new Fault(at < 0 ? "#VALUE!" : "#REF!");
  }
  return at;
}

function indexed([block, across, down]: readonly Given[]): Cell | Rows {
  const rows = block?.rows ?? [];
  const isLine = rows.length === 1 && down === undefined;
  const row = within(isLine ? undefined : across, rows.length);
  const col = within(isLine ? across : down, rows[0]?.length ?? 0);
  const picked = row === 0 ? rows : [rows[row - 1] ?? []];
  // a whole row or column where one value is meant
  if (picked.length > 1 || (col === 0 && (picked[0]?.length ?? 0) > 1)) doubt();
  return col === 0 ? picked : picked.map((line) => [line[col - 1] ?? null]);
}

const measured = (of: (rows: Rows) => number): Standard => ({
  least: 1,
  most: 1,
  kinds: "l",
  work: ([block]) => of(block?.rows ?? []),
});

export const finding: Readonly<Record<string, Standard>> = {
  ROWS: measured((rows) => rows.length),
  COLUMNS: measured((rows) => rows[0]?.length ?? 0),
  INDEX: { least: 2, most: 3, kinds: "lvv", work: indexed },
  MATCH: {
    least: 2,
    most: 3,
    kinds: "vlv",
    work: ([wanted, list, kind]) => {
      const rows = list?.rows ?? [];
      if (rows.length > 1 && (rows[0]?.length ?? 0) > 1) {
        doubt();
        throw new Fault("#N/A");
      }
      const way = kind === undefined ? 1 : number(first(kind));
      return place(first(wanted), rows.flat(), way) + 1;
    },
  },
  VLOOKUP: looking((rows) => rows),
  HLOOKUP: looking(turned, true),
  LOOKUP: {
    least: 2,
    most: 3,
    kinds: "vll",
    work: ([wanted, list, results]) => {
      const cells = list?.rows.flat() ?? [];
      const isBlock = (list?.rows.length ?? 0) > 1 && (list?.rows[0]?.length ?? 0) > 1;
      if (cells.some((cell) => typeof cell === "boolean")) doubt();
      if (isBlock || (results && results.rows.flat().length !== cells.length)) doubt();
      const key = first(wanted);
      // the last figure of a list in no order: the way to the latest entry
      const isLast =
        typeof key === "number" && cells.every((cell) => typeof cell !== "number" || cell < key);
      const at = isLast
        ? cells.map((cell) => typeof cell).lastIndexOf("number")
        : place(key, cells, 1);
      if (at < 0) throw new Fault("#N/A");
      const found = looked((results ?? list)?.rows.flat()[at] ?? null);
      if (typeof found === "boolean") doubt();
      return found;
    },
  },
  SUMPRODUCT: {
    least: 1,
    most: 255,
    kinds: "l",
    work: (given) => productsOf(given),
  },
};

function productsOf(given: readonly Given[]): number {
  const [one] = given;
  const size = ({ rows }: Given) => `${rows.length},${rows[0]?.length ?? 0}`;
  if (!one || given.some((each) => size(each) !== size(one))) throw new Fault("#VALUE!");
  const columns = given.map(({ rows }) => rows.flat());
  const products = (columns[0] ?? []).map((_, at) =>
    columns.reduce((product, cells) => {
      const cell = cells[at] ?? null;
      if (cell instanceof Fault) {
        if (columns.length > 1) doubt();
        throw cell;
      }
      if (typeof cell === "boolean") doubt();
      return typeof cell === "number" || typeof cell === "boolean" ? product * Number(cell) : 0;
    }, 1),
  );
  return products.reduce((sum, product) => sum + product, 0);
}
