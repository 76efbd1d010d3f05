/** An empty sheet that a call is written out on: helper cells one below another in a column of theirs. */
import type { TwinArgument } from "../../functions/twin";

export interface PlainCell {
  readonly cell: string;
  /** What a helper cell holds; "" for a cell of the answer. */
  readonly label: string;
  /** With its equals sign. */
  readonly formula: string;
}

/** Helper cells stand in this column, right of what a table takes. */
const helpersIn = "H";

export class Page {
  readonly helpers: PlainCell[] = [];
  readonly #known = new Map<string, string>();

  #add(label: string, formula: string): string {
    const cell = `${helpersIn}${this.helpers.length + 1}`;
    this.helpers.push({ cell, label, formula: `=${formula}` });
    return cell;
  }

  helper(label: string, formula: string): string {
    const known = this.#known.get(formula);
    if (known !== undefined) return known;
    const cell = this.#add(label, formula);
    this.#known.set(formula, cell);
    return cell;
  }

  column(label: string, formulas: readonly string[]): TwinArgument {
    const cells = formulas.map((formula, place) => this.#add(`${label} (${place + 1})`, formula));
    const [first = ""] = cells;
    const last = cells.at(-1) ?? first;
    return {
      text: first === last ? first : `${first}:${last}`,
      rows: cells.length,
      columns: 1,
      cell: (row) => cells[row] ?? "",
    };
  }
}
