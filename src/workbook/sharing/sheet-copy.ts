/** One sheet of a partner copy: what becomes of each of its formulas, and its part written anew. */
import { splice, type Replacement } from "../formula/splice";
import { cellName } from "../xlsx/cell-address";
import type { CellValue } from "../xlsx/model";
import type { Package } from "../xlsx/package/package";
import { grownDimension } from "../xlsx/patch/dimension";
import { withFormula } from "../xlsx/patch/formula-text";
import { SheetCells } from "../xlsx/patch/sheet-cells";
import { type Plan, WantedCells } from "../xlsx/patch/wanted";
import type { ListedSheet } from "../xlsx/read/workbook-part";
import { type RawCell, scanSheet } from "../xlsx/read/sheet-scan";
import { attribute } from "../xlsx/xml/scan";
import type { Node } from "../xlsx/xml/tree";
import type { Converter } from "./converter";
import { type Instance, shownHome } from "./instance";
import type { Tally } from "./report";
import { RuleFormulas } from "./rule-formulas";
import { type FoundFormula, placeKey } from "./sheet-formulas";
import { type FormulaTemplate, written } from "./template";

interface Converted {
  readonly found: FoundFormula;
  readonly instance: Instance;
  readonly template: FormulaTemplate;
}

export interface ReadSheet {
  readonly listed: ListedSheet;
  readonly text: string;
  readonly frame: Node;
  readonly found: readonly FoundFormula[];
}

/** As many cells as are named for one sheet. */
const mostInputs = 24;
/** Cells and blocks of the sheet itself, outside texts and names. */
const ownCells =
  /(?<![\w.!"'[\]$:])\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?(?![\w.("'!:])/g;

const stored = (value: CellValue | undefined): CellValue => value ?? "";

export class SheetCopy {
  readonly instances: Instance[] = [];
  private readonly converted: Converted[] = [];
  private readonly sentences: FoundFormula[] = [];
  /** Left, but leaning on a text that goes. */
  private readonly ownTexts: FoundFormula[] = [];
  private readonly rules: RuleFormulas;
  private readonly formulaCells: ReadonlySet<string>;

  constructor(
    private readonly sheet: ReadSheet,
    converter: Converter,
    private readonly tally: Tally,
  ) {
    this.formulaCells = new Set(sheet.found.map(({ raw }) => cellName(raw.row, raw.column)));
    for (const found of sheet.found) this.take(found, converter);
    this.rules = new RuleFormulas(sheet, converter, tally);
    this.instances.push(...this.rules.instances);
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
        this.noteInputs(found, converter);
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

  /** For those who get the copy: which cells a formula outside a table goes by. */
  private noteInputs({ text, raw }: FoundFormula, { facts }: Converter): void {
    const { name } = this.sheet.listed;
    const known = this.tally.inputs.get(name) ?? [];
    if (known.length > mostInputs || facts.tableAt(name, raw.row, raw.column)) return;
    for (const cells of text.match(ownCells) ?? []) {
      const plain = cells.replaceAll("$", "");
      const isFormula = this.formulaCells.has(plain);
      if (isFormula || known.includes(plain)) continue;
      known.push(known.length === mostInputs ? "and others" : plain);
      if (known.length > mostInputs) break;
    }
    if (known.length > 0) this.tally.inputs.set(name, known);
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
    this.tally.leave(
      shownHome(instance.home),
      `its table has ${String(rows.length)} rows and ${String(columns)} columns, and only those are plain formulas that it shows in the file (${String(down)} and ${String(across)})`,
    );
  }

  /** Writes the sheet's part. Returns the cells that the order of calculation must forget. */
  write(file: Package): readonly string[] {
    if (this.isUntouched) return [];
    const { listed, text, frame } = this.sheet;
    const replacements: Replacement[] = [...this.rules.replacements(text)];
    const wanted = new WantedCells();
    const dropped: string[] = [];
    for (const each of this.converted) {
      if (each.template.isTable) wantTable(wanted, each);
      else replacements.push(...formulaReplaced(text, each, dropped));
    }
    for (const found of this.sentences) wantSentence(wanted, found);
    for (const { raw, text: own } of this.ownTexts) {
      replacements.push(...withFormula(text, raw, { text: own }));
    }
    if (!wanted.isEmpty) {
      const cells = cellsChanged(listed.name, text, wanted);
      scanSheet(listed.part, text, cells);
      replacements.push(...cells.replacements, ...grownDimension(text, frame, wanted));
      dropped.push(...cells.droppedFormulas);
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
    dynamicMark: undefined,
    columnStyle: () => 0,
    dressed: (style) => style,
    formatOf: () => "General",
  });
}

const isArrayCell = (raw: RawCell): boolean =>
  raw.formula !== undefined && attribute(raw.formula.tag, "t") === "array";

function formulaReplaced(
  sheet: string,
  { found, instance, template }: Converted,
  dropped: string[],
): Replacement[] {
  const { raw, array } = found;
  const parts = template.rows[0]?.[0] ?? [];
  const isMany = array !== undefined && array.rows * array.columns > 1;
  const own = { row: raw.row, column: raw.column, rows: 1, columns: 1 };
  const area = isMany ? array : template.isArray ? own : undefined;
  if (isArrayCell(raw) && !area) dropped.push(cellName(raw.row, raw.column));
  return withFormula(sheet, raw, { text: written(parts, instance, "here"), array: area });
}

/** A plain formula, or the value it had, in each cell of a table that spilled. */
function wantTable(wanted: WantedCells, { found, instance, template }: Converted): void {
  const { raw, array, answers } = found;
  const { rows, columns } = array ?? { rows: 1, columns: 1 };
  for (let down = 0; down < rows; down++) {
    for (let across = 0; across < columns; across++) {
      const place = { row: raw.row + down, column: raw.column + across };
      const isFirst = down === 0 && across === 0;
      const value = stored(
        isFirst ? found.value() : answers.get(placeKey(place.row, place.column)),
      );
      const parts = template.rows[down]?.[across];
      const own = { ...place, rows: 1, columns: 1 };
      const plan: Plan = parts
        ? {
            kind: "formula",
            formula: written(parts, instance, "here"),
            result: value,
            ...(template.isArray ? { array: own } : {}),
          }
        : { kind: "value", value };
      if (!parts && !isFirst) wanted.set({ ...place, plan: { kind: "keep" }, dress: {} });
      else wanted.set({ ...place, plan, dress: {} });
    }
  }
}

/** The cell keeps what it shows; so do the others that its formula answered in. */
function wantSentence(wanted: WantedCells, { raw, array, answers, value }: FoundFormula): void {
  const own = value();
  const plan: Plan = own === undefined ? { kind: "nothing" } : { kind: "value", value: own };
  wanted.set({ row: raw.row, column: raw.column, plan, dress: {} });
  if (!array) return;
  for (const place of answers.keys()) {
    const [row = 0, column = 0] = place.split(",").map(Number);
    wanted.set({ row, column, plan: { kind: "keep" }, dress: {} });
  }
}
