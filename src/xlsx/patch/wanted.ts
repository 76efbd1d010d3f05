/** The cells of one sheet that are to change, row by row. The last word on a cell counts. */
import type { Area, Place } from "../../sheet/area";

import type { Meant } from "../formulas/to-file";
import type { Content, Dress } from "./edits";

/** What a cell is to hold, ready to be written. */
export type Plan =
  | Exclude<Content, { kind: "value" } | { kind: "formula" }>
  | { readonly kind: "value"; readonly value: StoredValue }
  | {
      readonly kind: "formula";
      /** As the file holds it, no equals sign. */
      readonly formula: string;
      /** What it is to say: see read-back.ts. */
      readonly meant: Meant;
      readonly result: StoredValue | undefined;
      /** It is an array formula over this area. */
      readonly array?: Area;
    }
  /** What the array formula of another cell answers here. */
  | {
      readonly kind: "spilled";
      readonly value: StoredValue;
      readonly from: Place;
      /** What stood there was to go first. */
      readonly isEmptied: boolean;
    };

/** A value fit for a file: finite, of a length a cell can hold, its error one that files know. */
export type StoredValue = string | number | boolean | { readonly error: string };

export interface Wanted extends Place {
  readonly plan: Plan;
  readonly dress: Dress;
  /** The style of a cell that is not there yet, or has none. */
  readonly base?: number;
  /** Where the cell has no number format, it is to have one for dates. */
  readonly isDate?: boolean;
}

export class WantedCells {
  private readonly rows = new Map<number, Map<number, Wanted>>();

  set(wanted: Wanted): void {
    let row = this.rows.get(wanted.row);
    if (!row) this.rows.set(wanted.row, (row = new Map<number, Wanted>()));
    row.set(wanted.column, wanted);
  }

  get({ row, column }: Place): Wanted | undefined {
    return this.rows.get(row)?.get(column);
  }

  get isEmpty(): boolean {
    return this.rows.size === 0;
  }

  /** Rows that change, from the top. */
  rowNumbers(): number[] {
    return [...this.rows.keys()].sort((a, b) => a - b);
  }

  /** The cells of a row, from the left. */
  inRow(row: number): readonly Wanted[] {
    return [...(this.rows.get(row)?.values() ?? [])].sort((a, b) => a.column - b.column);
  }

  /** Those of an area. */
  within(area: Area): Wanted[] {
    const rows = [...this.rows].filter(([row]) => row >= area.row && row < area.row + area.rows);
    return rows.flatMap(([, cells]) =>
      [...cells.values()].filter(
        ({ column }) => column >= area.column && column < area.column + area.columns,
      ),
    );
  }
}

/** Does it put something into the cell? */
export const isFilling = ({ plan }: Wanted): boolean =>
  plan.kind === "value" || plan.kind === "formula" || plan.kind === "spilled";

/** Does the formula that is there stay? */
export const keepsFormula = ({ plan }: Wanted): boolean =>
  plan.kind === "keep" || plan.kind === "result";
