/** The edits that make a file what the grid now holds, from what the grid held when it was opened. */
import type { CellPlace } from "../../sheet/area";
import type { Edit } from "../../xlsx";
import { empty } from "./cell-dress";
import { filterEdits } from "./filter-edits";
import { CellEdits } from "./cell-edits";
import { datesOut } from "./dates";
import type { CellState, GridState, SheetState } from "./grid-state";
import { type FileArrays, keyOf } from "./opened-file";
import {
  besideCells,
  freezeEdits,
  heightEdits,
  type SheetPair,
  tableEdits,
  widthEdits,
} from "./sheet-edits";

/** How the grid stands to the file it shows. */
export interface FileTerms {
  readonly dates: 1900 | 1904;
  readonly arrays: FileArrays;
  /** The width of a column in characters, from its pixels. */
  charactersOf(pixels: number): number;
  /** How many held formulas go by cells that are to change; the sheets by their names. */
  affected?(changed: readonly CellPlace[]): number;
}

export interface Edits {
  readonly edits: readonly Edit[];
  /** Formulas whose results in the file stay as they were although they may not hold any more. */
  readonly leftAsTheyWere: number;
  /** Cells whose look changed in a way the file is not told of. */
  readonly looksLost: number;
}

type Rows<T> = ReadonlyMap<number, ReadonlyMap<number, T>>;

/** Every place that either of the two knows, row by row. */
function* places(before: Rows<CellState> | undefined, now: Rows<CellState>) {
  const rows = new Set([...now.keys(), ...(before?.keys() ?? [])]);
  for (const row of [...rows].sort((a, b) => a - b)) {
    const cells = now.get(row);
    const there = before?.get(row);
    for (const column of new Set([...(cells?.keys() ?? []), ...(there?.keys() ?? [])])) {
      yield { row, column, before: there?.get(column) ?? empty, now: cells?.get(column) ?? empty };
    }
  }
}

function cellEdits(
  pair: SheetPair,
  terms: FileTerms,
  cells: CellEdits,
  isStopped: boolean,
): { readonly found: readonly Edit[]; readonly ofTheClock: readonly Edit[] } {
  const { before, now } = pair;
  const arrays = terms.arrays.get(now.name);
  const found: Edit[] = [];
  const ofTheClock: Edit[] = [];
  for (const place of places(before?.cells, now.cells)) {
    const { row, column } = place;
    const spillBefore = before?.spills.get(row)?.get(column);
    const spillNow = now.spills.get(row)?.get(column);
    const array = arrays?.get(keyOf(row, column));
    const own = cells.of({ ...place, spillBefore, spillNow, array, isStopped });
    const isClock = place.before.isOfAnotherDay && own.every(isResult);
    (isClock ? ofTheClock : found).push(...own);
  }
  return { found, ofTheClock };
}

const isResult = (edit: Edit): boolean => edit.do === "set-cell" && edit.content.kind === "result";

/** Cells that are emptied first: a formula may answer where something stood. */
const isEmptying = (edit: Edit): boolean =>
  edit.do === "set-cell" && edit.content.kind === "nothing";

/** Formulas that keep their result although something they go by changes. */
function stale(edits: readonly Edit[], now: GridState, terms: FileTerms): number {
  const changed = edits.flatMap((edit): CellPlace[] => {
    if (edit.do !== "set-cell" || edit.content.kind === "keep") return [];
    const { sheet, row, column } = edit;
    return [{ sheet, row, column }];
  });
  if (changed.length === 0) return 0;
  if (!now.isStopped) return terms.affected?.(changed) ?? 0;
  const all = now.sheets.flatMap(({ cells }) => [...cells.values()]);
  return all.reduce(
    (sum, row) => sum + [...row.values()].filter(({ formula }) => formula !== "").length,
    0,
  );
}

export function editsOf(before: GridState, now: GridState, terms: FileTerms): Edits {
  const sheetBefore = new Map(before.sheets.map((sheet) => [sheet.name, sheet]));
  const pairs = now.sheets.map((sheet: SheetState): SheetPair => ({
    before: sheetBefore.get(sheet.name),
    now: sheet,
  }));
  let leftAsTheyWere = 0;
  let looksLost = 0;
  const ofCells = pairs.map((pair) => {
    const cells = new CellEdits(pair, datesOut(terms.dates));
    const found = cellEdits(pair, terms, cells, now.isStopped);
    leftAsTheyWere += cells.leftAsTheyWere;
    looksLost += cells.looksLost;
    return found;
  });
  const byHand = ofCells.flatMap(({ found }) => found);
  // that another day has come is no change by itself: what was not touched is the same file
  const inCells =
    byHand.length === 0 ? byHand : [...byHand, ...ofCells.flatMap(({ ofTheClock }) => ofTheClock)];
  leftAsTheyWere += stale(inCells, now, terms);
  const edits: Edit[] = [
    ...(leftAsTheyWere > 0 ? [{ do: "work-out-on-opening" } as const] : []),
    ...pairs.flatMap(({ before: there, now: { name } }): Edit[] =>
      there ? [] : [{ do: "add-sheet", name }],
    ),
    ...[...now.names].flatMap(([name, refersTo]): Edit[] =>
      before.names.has(name) ? [] : [{ do: "define-name", name, refersTo }],
    ),
    ...inCells.filter(isEmptying),
    // tables before formulas, which may name a column of the table they stand in
    ...pairs.flatMap(tableEdits),
    ...inCells.filter((edit) => !isEmptying(edit)),
    ...pairs.flatMap((pair) => [
      ...widthEdits(pair, (pixels) => terms.charactersOf(pixels)),
      ...freezeEdits(pair),
      ...heightEdits(pair),
      ...besideCells(pair),
      ...filterEdits(pair),
    ]),
  ];
  return { edits, leftAsTheyWere, looksLost };
}
