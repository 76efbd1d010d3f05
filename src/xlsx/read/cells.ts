/** The cells of a sheet as values: shared texts and shared formulas put in, array answers marked. */
import { readArea } from "../cell-address";
import { isoToSerial } from "../dates";
import { formulaFromFile } from "../formulas/from-file";
import { SharedFormula } from "../formulas/shared";
import type { Cell, CellValue } from "../model";
import { refuse } from "../problem";
import { decodeString } from "../xml/escape";
import { attribute, count } from "../xml/scan";
import { ArrayAreas } from "./array-areas";
import type { SharedStrings } from "./shared-strings";
import {
  type Budget,
  type RawCell,
  type RawFormula,
  rawName,
  type SheetVisitor,
} from "./sheet-scan";

export interface CellContext {
  readonly part: string;
  readonly strings: SharedStrings;
  readonly dynamicMarks: ReadonlySet<number>;
  readonly dates: 1900 | 1904;
  readonly budget: Budget;
}

/** A figure as files write it; what is none shows as the error it would give. */
function figure(text: string): CellValue {
  const value = Number(text);
  return text.trim() !== "" && Number.isFinite(value) ? value : { error: "#NUM!" };
}

export class CellReader implements SheetVisitor {
  readonly cells: Cell[] = [];
  richTexts = 0;
  private readonly shared = new Map<string, SharedFormula>();
  private readonly arrays = new ArrayAreas<"array" | "what-if">();

  constructor(private readonly context: CellContext) {}

  cell(raw: RawCell): void {
    const value = this.cellValue(raw);
    const formula = raw.formula && this.formula(raw, raw.formula);
    if (value === undefined && formula === undefined && raw.style === 0) return;
    const answers = this.arrays.at(raw);
    const spill = answers?.about === "array" ? answers.area : undefined;
    const isWhatIf =
      answers?.about === "what-if" ||
      (raw.formula && attribute(raw.formula.tag, "t") === "dataTable");
    this.cells.push({
      row: raw.row,
      column: raw.column,
      value,
      look: raw.style,
      ...formula,
      ...(spill ? { spilledFrom: { row: spill.row, column: spill.column } } : {}),
      ...(isWhatIf ? { isWhatIf } : {}),
    });
  }

  /** What a cell holds, or what its formula last came to. */
  cellValue(raw: RawCell): CellValue | undefined {
    if (raw.type === "inlineStr") return raw.inline && decodeString(raw.inline);
    const text = raw.value;
    if (text === undefined) return undefined;
    switch (raw.type) {
      case "s":
        return this.sharedText(raw, text);
      case "str":
        return decodeString(text);
      case "b":
        return text.trim() === "1" || text.trim() === "true";
      case "e":
        return { error: text.trim() || "#VALUE!" };
      case "d":
        return isoToSerial(text.trim(), this.context.dates) ?? decodeString(text);
      default:
        return text.trim() === "" ? undefined : figure(text);
    }
  }

  private sharedText(raw: RawCell, written: string): string {
    const { texts, rich } = this.context.strings;
    const index = Number(written);
    const text = texts[index];
    if (text === undefined) {
      const detail = `${rawName(raw)} holds a text that is not there`;
      return refuse({ code: "damaged", part: this.context.part, detail });
    }
    if (rich.has(index)) this.richTexts += 1;
    return text;
  }

  private formula(raw: RawCell, { tag, text }: RawFormula): Pick<Cell, "formula" | "array"> {
    const kind = attribute(tag, "t");
    if (kind === "shared") return this.sharedFormula(raw, attribute(tag, "si") ?? "", text);
    if (kind === "dataTable") {
      this.markArray(raw, attribute(tag, "ref"), "what-if");
      return {};
    }
    if (text === "") return {};
    const formula = formulaFromFile(text);
    if (kind !== "array") return { formula };
    const area = this.markArray(raw, attribute(tag, "ref"));
    const isDynamic = this.context.dynamicMarks.has(count(raw.tag, "cm"));
    return area ? { formula, array: { ...area, isDynamic } } : { formula };
  }

  private sharedFormula(raw: RawCell, index: string, text: string): Pick<Cell, "formula"> {
    const known = this.shared.get(index);
    if (known) {
      const isMaster = text !== "" && attribute((raw.formula as RawFormula).tag, "ref");
      if (!isMaster) return { formula: this.moved(known, raw) };
    }
    if (text === "") return {};
    this.shared.set(index, new SharedFormula(text, raw.row, raw.column));
    return { formula: formulaFromFile(text) };
  }

  private moved(known: SharedFormula, raw: RawCell): string {
    const text = known.at(raw.row, raw.column);
    this.context.budget.sharedText -= text.length;
    if (this.context.budget.sharedText < 0) refuse({ code: "too-large" });
    return formulaFromFile(text);
  }

  /** Remembers where the answers of an array stand. */
  private markArray(raw: RawCell, ref: string | undefined, about: "array" | "what-if" = "array") {
    const area = readArea(ref ?? "");
    if (area?.row !== raw.row || area.column !== raw.column) return undefined;
    this.arrays.add(area, about);
    return area;
  }
}
