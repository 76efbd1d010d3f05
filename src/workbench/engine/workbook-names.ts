/** The sheets, tables and defined names of the open workbook. */
import {
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { IDefinedNamesService, ISuperTableService } from "@univerjs/engine-formula";
import type { Area, KnownNames, KnownTable } from "./references";

export class WorkbookNames implements KnownNames {
  constructor(private readonly injector: Injector) {}

  get workbook(): Workbook {
    const workbook = this.injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    if (!workbook) throw new Error("No workbook is open.");
    return workbook;
  }

  /** The engine's own name for the workbook. */
  get unit(): string {
    return this.workbook.getUnitId();
  }

  get sheets(): string[] {
    return this.workbook.getSheets().map((sheet) => sheet.getName());
  }

  sheet(name: string): Worksheet | undefined {
    return this.workbook.getSheetBySheetName(name) ?? undefined;
  }

  /** The engine's own name for a sheet; "" when there is no such sheet. */
  sheetId(name: string): string {
    return this.sheet(name)?.getSheetId() ?? "";
  }

  extent(name: string): Area | undefined {
    const range = this.sheet(name)?.getCellMatrix().getDataRange();
    if (!range) return undefined;
    return { sheet: name, top: 0, left: 0, bottom: range.endRow, right: range.endColumn };
  }

  private get tableNames(): string[] {
    return [...(this.injector.get(ISuperTableService).getTableMap(this.unit)?.keys() ?? [])];
  }

  tables(sheet: string): KnownTable[] {
    return this.tableNames
      .flatMap((name) => this.table(name) ?? [])
      .filter((table) => table.sheet === sheet);
  }

  table(name: string): KnownTable | undefined {
    const spelt = this.tableNames.find((each) => each.toLowerCase() === name.toLowerCase());
    if (spelt === undefined) return undefined;
    const found = this.injector.get(ISuperTableService).getTable(this.unit, spelt);
    const sheet = found && this.workbook.getSheetBySheetId(found.sheetId)?.getName();
    if (!found || !sheet) return undefined;
    const { startRow: top, startColumn: left, endRow: bottom, endColumn: right } = found.range;
    return { sheet, top, left, bottom, right, headings: [...found.titleMap.keys()] };
  }

  definedName(name: string): string | undefined {
    const found = this.injector.get(IDefinedNamesService).getValueByName(this.unit, name);
    return found?.formulaOrRefString.replace(/^=/, "");
  }
}
