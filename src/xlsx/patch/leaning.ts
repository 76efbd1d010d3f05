/** Formulas that other cells lean on, followed through a sheet while some of them change. */
import { readArea } from "../cell-address";
import { SharedFormula } from "../formulas/shared";
import { ArrayAreas } from "../read/array-areas";
import type { RawCell } from "../read/sheet-scan";
import { attribute } from "../xml/scan";

export interface Leaned {
  /** The formula in the first cell goes, so the other cells lose what it answered. */
  readonly isReplaced: boolean;
}

export class Leaning {
  readonly arrays = new ArrayAreas<Leaned>();
  /** Shared formulas whose text goes with their first cell, by number. */
  private readonly broken = new Map<string, SharedFormula>();

  /** Told of every cell that holds a formula, after it was decided whether the formula goes. */
  pass(raw: RawCell, isReplaced: boolean): void {
    const { formula } = raw;
    if (!formula) return;
    const ref = attribute(formula.tag, "ref");
    const kind = attribute(formula.tag, "t");
    if (ref === undefined) return;
    if (kind === "array" || kind === "dataTable") {
      const area = readArea(ref);
      if (area?.row === raw.row && area.column === raw.column)
        this.arrays.add(area, { isReplaced });
    } else if (kind === "shared" && formula.text !== "") {
      const index = attribute(formula.tag, "si") ?? "";
      if (isReplaced) this.broken.set(index, new SharedFormula(formula.text, raw.row, raw.column));
      else this.broken.delete(index);
    }
  }

  /** The text of a formula whose shared text has gone. */
  ownFormula(raw: RawCell): string | undefined {
    const tag = raw.formula?.tag;
    if (!tag || attribute(tag, "t") !== "shared" || this.broken.size === 0) return undefined;
    const isMaster = attribute(tag, "ref") !== undefined && raw.formula?.text !== "";
    if (isMaster) return undefined;
    return this.broken.get(attribute(tag, "si") ?? "")?.at(raw.row, raw.column);
  }
}

/** Is the formula one that answers, or answered, as an array? */
export const isArrayFormula = ({ formula }: RawCell): boolean => {
  const kind = formula && attribute(formula.tag, "t");
  return kind === "array" || kind === "dataTable";
};
