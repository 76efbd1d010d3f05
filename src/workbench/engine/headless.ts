/**
 * The embedded engine without a page: opens a Book, takes values and formulas, answers raw values. For
 * tests, and for the values the page shows before its grid is ready.
 */
import {
  ICommandService,
  type Injector,
  IUniverInstanceService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
} from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { SetRangeValuesCommand, UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import type { Book, BookValue } from "../../sheet/book";
import { snapshotOf } from "../snapshot";
import type { GivenCell } from "./cells";
import type { Holding } from "../holding/holding";
import type { HeldTerms } from "../holding/held-terms";
import { surroundingsOf } from "../holding/surroundings";
import { keepFormulas } from "./keep-formulas";
import { engineFunctions } from "./registration";
import { settled } from "./settled";
import { equipEngine, type Working } from "./steady/equip";
import type { CellPlace } from "../../sheet/area";
import { WorkbookCells } from "./workbook-cells";

/** Text that starts with an equals sign is a formula; null empties the cell. */
export type Typed = BookValue | null;

export class HeadlessWorkbook {
  readonly cells: WorkbookCells;

  private constructor(
    private readonly univer: Univer,
    readonly working: Working,
  ) {
    this.cells = new WorkbookCells(univer.__getInjector());
  }

  /** For a host over this workbook. */
  get injector(): Injector {
    return this.univer.__getInjector();
  }

  /** Opens a book with every formula computed. */
  static open(book: Book): Promise<HeadlessWorkbook> {
    return HeadlessWorkbook.openSnapshot(snapshotOf(book));
  }

  /**
   * ... or any other snapshot.
   * @param held which formulas are held, as in the page; without it, all are worked out
   */
  static async openSnapshot(
    snapshot: IWorkbookData,
    held?: { readonly holding: Holding; readonly terms: HeldTerms },
  ): Promise<HeadlessWorkbook> {
    const univer = new Univer({
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: {} },
      logLevel: LogLevel.ERROR,
    });
    keepFormulas(univer);
    univer.registerPlugin(UniverFormulaEnginePlugin, { function: engineFunctions });
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, {
      initialFormulaComputing: CalculationMode.FORCED,
    });
    univer.registerPlugin(UniverSheetsTablePlugin);
    const working = equipEngine(univer, held?.holding);
    held?.holding.begin(
      snapshot.id,
      surroundingsOf(univer.__getInjector(), snapshot.id),
      held.terms,
    );
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, snapshot);
    const workbook = new HeadlessWorkbook(univer, working);
    // undo and redo are for the unit in focus
    univer.__getInjector().get(IUniverInstanceService).focusUnit(workbook.cells.names.unit);
    await workbook.computed();
    return workbook;
  }

  /** Types into cells, row by row from a first cell, and waits for what depends on them. */
  async type(
    { sheet, row, column }: CellPlace,
    rows: readonly (readonly Typed[])[],
  ): Promise<void> {
    const value = rows.map((cells) =>
      cells.map((typed) =>
        typeof typed === "string" && typed.startsWith("=")
          ? { f: typed, v: null }
          : { v: typed, f: null },
      ),
    );
    const range = {
      startRow: row,
      startColumn: column,
      endRow: row + rows.length - 1,
      endColumn: column + Math.max(...rows.map((cells) => cells.length)) - 1,
    };
    await this.univer
      .__getInjector()
      .get(ICommandService)
      .executeCommand(SetRangeValuesCommand.id, {
        unitId: this.cells.names.unit,
        subUnitId: this.cells.names.sheetId(sheet),
        range,
        value,
      });
    await this.computed();
  }

  value(place: CellPlace): GivenCell {
    return this.cells.value(place);
  }

  /** Resolves when the results of the latest change are in the cells. */
  async computed(): Promise<void> {
    await settled(this.injector, 180_000);
  }

  close(): void {
    this.univer.dispose();
  }
}
