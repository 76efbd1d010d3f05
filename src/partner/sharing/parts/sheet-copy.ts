/** One sheet of a partner copy: what becomes of each of its formulas, and its part written anew. */
import { cellName } from "../../../sheet/cell-name";
import { counted } from "../../../sheet/counted";
import { splice, type Replacement } from "../../../sheet/formula/splice";
import type { Package } from "../../../xlsx/package/package";
import { grownDimension } from "../../../xlsx/patch/dimension";
import { type NewFormula, withFormula } from "../../../xlsx/patch/formula-text";
import { SheetCells } from "../../../xlsx/patch/sheet-cells";
import { WantedCells } from "../../../xlsx/patch/wanted";
import type { ListedSheet } from "../../../xlsx/read/workbook-part";
import { type RawCell, scanSheet } from "../../../xlsx/read/sheet-scan";
import { attribute } from "../../../xlsx/xml/scan";
import type { Node } from "../../../xlsx/xml/tree";
import type { Converter } from "../converter";
import { Inputs } from "../inputs";
import type { Instance } from "../workings/instance";
import { shownHome } from "../workings/standing";
import type { Ledger } from "../ledger";
import type { Tally } from "../report";
import { RuleFormulas } from "./rule-formulas";
import type { FoundFormula } from "./sheet-formulas";
import { type Converted, wantSentence, wantTable } from "../workings/wanted-answers";
import { type FormulaTemplate, written } from "../workings/template";

export interface ReadSheet {
  readonly listed: ListedSheet;
  readonly text: string;
  readonly frame: Node;
  readonly found: readonly FoundFormula[];
}

export class SheetCopy {
  readonly instances: Instance[] = [];
  private readonly converted: Converted[] = [];
  private readonly sentences: FoundFormula[] = [];
  /** Left, but leaning on a text that goes. */
  private readonly ownTexts: FoundFormula[] = [];
  private readonly rules: RuleFormulas;
  private readonly inputs: Inputs;

  constructor(
    private readonly sheet: ReadSheet,
    converter: Converter,
    private readonly tally: Tally,
  ) {
    this.inputs = new Inputs(sheet, converter.facts);
    for (const found of sheet.found) this.take(found, converter);
    this.rules = new RuleFormulas(sheet, converter, tally);
    this.instances.push(...this.rules.instances);
    if (this.inputs.cells.length > 0) tally.inputs.set(sheet.listed.name, this.inputs.cells);
    if (!this.isUntouched) tally.sheets.add(sheet.listed.name);
  }

  private get isUntouched(): boolean {
    return this.converted.length + this.sentences.length === 0 && this.rules.isEmpty;
  }

  private take(found: FoundFormula, converter: Converter): void {
    const { row, column } = found.raw;
    const home = { sheet: this.sheet.listed.name, row, column, isFixed: false };
    const instance = converter.instance(found.text, home);
    if (!instance) return;
    const { template } = instance;
    for (const id of template.ids) this.tally.ids.add(id);
    switch (template.kind) {
      case "formulas":
        this.tally.formulas += 1;
        this.instances.push(instance);
        this.converted.push({ found, instance, template });
        this.noteRoom(found, instance, template);
        this.inputs.note(found);
        return;
      case "value":
        this.keepSentence(found);
        return;
      case "left":
        if (template.isSentence && typeof found.value() === "string") {
          return this.keepSentence(found);
        }
        this.tally.leave(shownHome(home), template.reason);
        if (found.isLeaning) this.ownTexts.push(found);
    }
  }

  private keepSentence(found: FoundFormula): void {
    this.tally.sentences += 1;
    this.sentences.push(found);
  }

  /** A table that is larger than the room it took in the file. */
  private noteRoom(
    { array }: FoundFormula,
    instance: Instance,
    { rows, isTable }: FormulaTemplate,
  ) {
    if (!isTable) return;
    const [down, across] = [array?.rows ?? 1, array?.columns ?? 1];
    const columns = Math.max(...rows.map((row) => row.length));
    if (rows.length <= down && columns <= across) return;
    const held = `${counted(down, "row")} and ${counted(across, "column")}`;
    const reason = `the file holds ${held} of its table of ${counted(rows.length, "row")} and ${counted(columns, "column")}; have it calculated and saved, then share it again`;
    this.tally.leave(shownHome(instance.home), reason, true);
  }

  /** Writes the sheet's part. Returns the cells that the order of calculation must forget. */
  write(file: Package, ledger: Ledger): readonly string[] {
    if (this.isUntouched) return [];
    const { listed, text, frame } = this.sheet;
    const replacements: Replacement[] = [...this.rules.replacements(text, listed.part, ledger)];
    const wanted = new WantedCells();
    const dropped: string[] = [];
    for (const each of this.converted) {
      if (each.template.isTable) wantTable(wanted, each);
      else {
        const { raw } = each.found;
        const formula = newFormula(each);
        ledger.formula(listed.name, raw, formula.text, formula.array);
        if (isArrayCell(raw) && !formula.array) dropped.push(cellName(raw.row, raw.column));
        replacements.push(...withFormula(text, raw, formula));
      }
    }
    for (const found of this.sentences) wantSentence(wanted, found);
    for (const { raw, text: own } of this.ownTexts) {
      replacements.push(...withFormula(text, raw, { text: own }));
    }
    if (!wanted.isEmpty) {
      for (const row of wanted.rowNumbers()) {
        for (const each of wanted.inRow(row)) ledger.wanted(listed.name, each);
      }
      const cells = cellsChanged(listed.name, text, wanted);
      scanSheet(listed.part, text, cells);
      for (const each of cells.replacements) replacements.push(each);
      replacements.push(...grownDimension(text, frame, wanted));
      for (const each of cells.droppedFormulas) dropped.push(each);
    }
    file.set(listed.part, splice(text, replacements));
    return dropped;
  }
}

function cellsChanged(sheet: string, text: string, wanted: WantedCells): SheetCells {
  return new SheetCells({
    sheet,
    text,
    wanted,
    heights: new Map(),
    hidden: new Map(),
    dynamicMark: undefined,
    columnStyle: () => 0,
    dressed: (style) => style,
    formatOf: () => "General",
  });
}

const isArrayCell = (raw: RawCell): boolean =>
  raw.formula !== undefined && attribute(raw.formula.tag, "t") === "array";

function newFormula({ found, instance, template }: Converted): NewFormula {
  const { raw, array } = found;
  const parts = template.rows[0]?.[0] ?? [];
  const isMany = array !== undefined && array.rows * array.columns > 1;
  const own = { row: raw.row, column: raw.column, rows: 1, columns: 1 };
  const area = isMany ? array : template.isArray ? own : undefined;
  return { text: written(parts, instance, "here"), array: area };
}
