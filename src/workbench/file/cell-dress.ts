/** What a file is told of the look of one cell. */
import type { Dress } from "../../xlsx";
import { lookBehind } from "./file-style";
import type { CellState } from "./grid-state";
import type { SheetPair } from "./sheet-edits";
import { type StyleChange, styleChange } from "./style-change";

export const empty: CellState = {
  value: null,
  formula: "",
  isHeld: false,
  isDoubtful: false,
  style: undefined,
  fileLook: undefined,
  note: "",
  words: undefined,
  print: undefined,
};

const told = (dress: Dress, losesSome = false): StyleChange => ({ dress, losesSome });

/** A cell that came from elsewhere has the look it had there, and what was changed of it. */
function moved({ before, now: sheetNow }: SheetPair, column: number, now: CellState): StyleChange {
  const sheet = before ?? sheetNow;
  const own = lookBehind(now.style);
  const usual = sheet.emptyStyle(column);
  const as = own ?? lookBehind(usual) ?? 0;
  if (now.style === undefined) return told({ as });
  const change = styleChange(own === undefined ? usual : sheet.fileStyle(own), now.style);
  return told({ as, ...change.dress }, change.losesSome);
}

interface Place {
  readonly column: number;
  readonly before: CellState;
  readonly now: CellState;
}

export function dressOf(pair: SheetPair, { column, before, now }: Place): StyleChange {
  const was = lookBehind(before.style);
  if (was !== undefined && was !== lookBehind(now.style)) return moved(pair, column, now);
  const usual = (pair.before ?? pair.now).emptyStyle(column);
  if (now.style === undefined) return before.style ? styleChange(before.style, usual) : told({});
  // the very look of a cell of the file, which is given as such
  if (before.style === undefined && now.fileLook !== undefined) {
    return told(before === empty && now.value === null && now.formula === "" ? { look: {} } : {});
  }
  return styleChange(before.style ?? usual, now.style);
}
