/** One sheet of the file gone through: which formulas of it are to be written in plain functions. */
import { readArea } from "../../../xlsx/cell-address";
import { SharedFormula } from "../../../xlsx/formulas/shared";
import type { Area } from "../../../sheet/area";
import type { CellValue } from "../../../xlsx/model";
import { ArrayAreas } from "../../../xlsx/read/array-areas";
import { CellReader, type CellContext } from "../../../xlsx/read/cells";
import type { RawCell, SheetVisitor } from "../../../xlsx/read/sheet-scan";
import { attribute } from "../../../xlsx/xml/scan";
import { mayCallUs } from "../converter";
import type { Facts } from "../facts";

/** A formula that may call ours. */
export interface FoundFormula {
  readonly raw: RawCell;
  /** As the file holds it; of a shared formula, as it is for this cell. */
  readonly text: string;
  /** It is an array formula over this area. */
  readonly array: Area | undefined;
  /** It leans on the text in another cell. */
  readonly isLeaning: boolean;
  /** What it last came to. */
  value: () => CellValue | undefined;
  /** What it came to in the other cells of its area, by place. */
  readonly answers: Map<string, CellValue | undefined>;
}

const none = {};

/** Most cells have nothing in their tags that is asked for again: there can be very many of them. */
function slim(raw: RawCell): RawCell {
  const { tag, formula } = raw;
  if (!formula || tag.attributes.cm || formula.tag.attributes.t) return raw;
  return {
    ...raw,
    tag: { ...tag, attributes: none },
    formula: { ...formula, tag: { ...formula.tag, attributes: none } },
  };
}

export const placeKey = (row: number, column: number): string => `${String(row)},${String(column)}`;

export class SheetFormulas implements SheetVisitor {
  readonly found: FoundFormula[] = [];
  private readonly shared = new Map<string, SharedFormula | undefined>();
  private readonly arrays = new ArrayAreas<FoundFormula | undefined>();
  private readonly values: CellReader;

  constructor(
    private readonly sheet: string,
    private readonly facts: Facts,
    context: CellContext,
  ) {
    this.values = new CellReader(context);
  }

  cell(raw: RawCell): void {
    const array = this.arrays.at(raw)?.about;
    array?.answers.set(placeKey(raw.row, raw.column), this.values.cellValue(raw));
    const { formula } = raw;
    if (!formula) return;
    switch (attribute(formula.tag, "t")) {
      case "shared":
        return this.sharedFormula(raw, attribute(formula.tag, "si") ?? "", formula.text);
      case "array":
        return this.arrayFormula(raw, formula.text, attribute(formula.tag, "ref"));
      case "dataTable":
        return;
      default:
        this.add(raw, formula.text);
    }
  }

  private add(
    given: RawCell,
    text: string,
    more: Partial<Pick<FoundFormula, "array" | "isLeaning">> = {},
  ): FoundFormula | undefined {
    if (!mayCallUs(text)) return undefined;
    const raw = slim(given);
    const value = () => this.values.cellValue(raw);
    const answers = new Map<string, CellValue | undefined>();
    const found = { raw, text, array: undefined, isLeaning: false, ...more, value, answers };
    this.found.push(found);
    return found;
  }

  /** The text stands in one cell; the others have it moved. */
  private sharedFormula(raw: RawCell, index: string, text: string): void {
    const isFirst = text !== "" && attribute(raw.formula?.tag ?? raw.tag, "ref") !== undefined;
    if (isFirst || (text !== "" && !this.shared.has(index))) {
      const moved = mayCallUs(text) ? new SharedFormula(text, raw.row, raw.column) : undefined;
      this.shared.set(index, moved);
      this.add(raw, text);
      return;
    }
    const known = this.shared.get(index);
    if (known) this.add(raw, known.at(raw.row, raw.column), { isLeaning: true });
  }

  private arrayFormula(raw: RawCell, text: string, ref: string | undefined): void {
    const area = readArea(ref ?? "");
    const isSound = area?.row === raw.row && area.column === raw.column;
    if (!isSound) {
      this.add(raw, text);
      return;
    }
    this.facts.addSpill(this.sheet, area);
    this.arrays.add(area, this.add(raw, text, { array: area }));
  }
}
