/** The sheets and tables of the open workbook, by their names. */
import {
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { ISuperTableService } from "@univerjs/engine-formula";

/** A block of cells of one sheet, all four edges counted from 0 and within it. */
export interface Area {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export class WorkbookNames {
  /** Asked for each cell that is read: not looked up each time. */
  private readonly instances: IUniverInstanceService;

  constructor(private readonly injector: Injector) {
    this.instances = injector.get(IUniverInstanceService);
  }

  get workbook(): Workbook {
    const workbook = this.instances.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
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

  /** The block of a sheet that holds anything; undefined when there is no such sheet. */
  extent(name: string): Area | undefined {
    const range = this.sheet(name)?.getCellMatrix().getDataRange();
    if (!range) return undefined;
    return { sheet: name, top: 0, left: 0, bottom: range.endRow, right: range.endColumn };
  }

  /** The tables of a sheet, heading row included. */
  tables(sheet: string): Area[] {
    const id = this.sheetId(sheet);
    const tables = this.injector.get(ISuperTableService).getTableMap(this.unit)?.values() ?? [];
    return [...tables]
      .filter(({ sheetId }) => sheetId === id)
      .map(({ range }) => ({
        sheet,
        top: range.startRow,
        left: range.startColumn,
        bottom: range.endRow,
        right: range.endColumn,
      }));
  }
}
