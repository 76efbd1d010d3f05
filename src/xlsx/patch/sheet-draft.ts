/** A sheet and its tables as they will be, beside what they are. */
import type { Chart } from "../chart/chart";
import type { Area, Place } from "../../sheet/area";
import { isWithin, overlaps } from "../cell-address";
import type { Cell, Note, Sheet, Table } from "../model";
import type { StoredFormula } from "../formulas/to-file";
import type { ListedSheet } from "../read/workbook-part";
import type { Move } from "./beside";
import type { Choice } from "./choices";
import type { PrintSetup } from "../../sheet/print-setup";
import type { Freeze } from "./freeze";
import type { FilterEdit } from "./table/filter";
import type { Height } from "../xml/row-tag";
import { WantedCells } from "./wanted";

export interface ColumnDraft {
  readonly heading: string;
  readonly formula?: StoredFormula;
}

/** A table as it will be. */
export interface TableDraft {
  readonly name: string;
  readonly sheet: SheetDraft;
  area: Area;
  readonly hasTotals: boolean;
  readonly columns: ColumnDraft[];
  /** As the file has it; undefined for one that is added. */
  readonly before: Table | undefined;
  /** Of columns that are added, by heading in small letters. */
  readonly formulas: Map<string, StoredFormula>;
}

export class SheetDraft {
  readonly wanted = new WantedCells();
  readonly widths = new Map<number, number>();
  /** In points, by row. */
  readonly heights = new Map<number, Height>();
  readonly choices: Choice[] = [];
  readonly notes: Note[] = [];
  /** Of what hangs on cells. */
  readonly moves: Move[] = [];
  readonly filters: FilterEdit[] = [];
  readonly tables: TableDraft[] = [];
  readonly charts: Chart[] = [];
  freeze: Freeze | undefined;
  print: PrintSetup | undefined;

  /** `now` is the sheet as it was opened; undefined for one that is added. */
  constructor(
    readonly listed: ListedSheet,
    readonly now: Sheet | undefined,
    /** Its file holds calls of ours as array formulas. */
    readonly callsAreArrays: boolean,
  ) {
    for (const table of now?.tables ?? []) {
      const { name, area, hasTotals } = table;
      const columns = table.columns.map(({ heading }) => ({ heading }));
      const formulas = new Map<string, StoredFormula>();
      this.tables.push({ name, sheet: this, area, hasTotals, columns, before: table, formulas });
    }
  }

  get name(): string {
    return this.listed.name;
  }

  /** The table whose area, as it now is, a place lies in. */
  tableAt(place: Place): TableDraft | undefined {
    return this.tables.find(({ area }) => isWithin(area, place));
  }

  /** Cells of the file in an area. */
  cellsIn(area: Area): Cell[] {
    const cells = this.now?.cells ?? [];
    const found: Cell[] = [];
    for (let at = firstInRow(cells, area.row); at < cells.length; at++) {
      const cell = cells[at] as Cell;
      if (cell.row >= area.row + area.rows) break;
      if (isWithin(area, cell)) found.push(cell);
    }
    return found;
  }

  /** The look of a cell of the file; undefined where the file has no cell. */
  lookAt(row: number, column: number): number | undefined {
    return this.cellsIn({ row, column, rows: 1, columns: 1 })[0]?.look;
  }

  hasMergedIn(area: Area): boolean {
    return (this.now?.merged ?? []).some((merged) => overlaps(merged, area));
  }
}

/** Cells stand row by row: where those of a row begin. */
function firstInRow(cells: readonly Cell[], row: number): number {
  let low = 0;
  let high = cells.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((cells[middle] as Cell).row < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
