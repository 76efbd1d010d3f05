/** For those who get the copy: which cells the formulas outside tables go by. */
import { cellName } from "../../sheet/cell-name";
import type { Facts } from "./facts";
import type { FoundFormula } from "./parts/sheet-formulas";

/** As many cells as are named for one sheet. */
const mostInputs = 24;
/** Cells and blocks of the sheet itself, outside texts and names. */
const ownCells =
  /(?<![\w.!"'[\]$:])\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?(?![\w.("'!:])/g;

interface Sheet {
  readonly listed: { readonly name: string };
  readonly found: readonly FoundFormula[];
}

export class Inputs {
  readonly cells: string[] = [];
  private readonly sheet: string;
  private readonly formulaCells: ReadonlySet<string>;

  constructor(
    { listed, found }: Sheet,
    private readonly facts: Facts,
  ) {
    this.sheet = listed.name;
    this.formulaCells = new Set(found.map(({ raw }) => cellName(raw.row, raw.column)));
  }

  note({ text, raw }: FoundFormula): void {
    const { cells } = this;
    if (cells.length > mostInputs || this.facts.tableAt(this.sheet, raw.row, raw.column)) return;
    for (const found of text.match(ownCells) ?? []) {
      const plain = found.replaceAll("$", "");
      if (this.formulaCells.has(plain) || cells.includes(plain)) continue;
      cells.push(cells.length === mostInputs ? "and others" : plain);
      if (cells.length > mostInputs) return;
    }
  }
}
