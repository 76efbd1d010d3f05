/** The selected cell, as the pane and the announcer see it. Names no host: the grid fills it in. */
import type { CellPlace } from "../sheet/area";
import { readCellName } from "../xlsx/cell-address";
import type { GivenCell } from "./engine/cells";

export interface SelectedCell {
  readonly sheet: string;
  /** L4 */
  readonly address: string;
  /** With its equals sign; "" when there is none. */
  readonly formula: string;
  /** Raw: null when empty, an error as `{type: "Error", basicValue: "#N/A"}`. */
  readonly value: GivenCell;
  /** The text it holds as put in; not there for a figure, a formula, nothing. */
  readonly text?: string;
  /** The error it holds: #N/A; not there where it holds none. */
  readonly error?: string;
  /** As the grid shows it: 1.29 */
  readonly shown: string;
  /** What was written beside the cell, or beside the heading of its column. */
  readonly note: string;
  /** Why it is not worked out here and shows what it came to before; a sentence. */
  readonly held?: string;
  /** Why its result of now is not saved; a sentence. */
  readonly doubt?: string;
  /** Set when the value was spilled here by another cell's formula. */
  readonly spilledFrom?: { readonly address: string; readonly formula: string };
  /** The present values of a reference or an expression of its formula; undefined when not known. */
  readonly lookup: (written: string) => GivenCell[][] | undefined;
}

export function placeOf(cell: SelectedCell | undefined): CellPlace | undefined {
  const place = cell && readCellName(cell.address);
  return place && { sheet: cell.sheet, row: place.row, column: place.column };
}

/** Something one can watch: a plain store in the form React's useSyncExternalStore takes. */
export class Selection {
  private cell: SelectedCell | undefined;
  private readonly listeners = new Set<() => void>();

  /** Undefined until the grid is ready. */
  readonly current = (): SelectedCell | undefined => this.cell;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  set(cell: SelectedCell | undefined): void {
    this.cell = cell;
    for (const listener of this.listeners) listener();
  }
}
