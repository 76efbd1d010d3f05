/** What the grid holds at one moment, as plain values: two of these tell what was edited. */
import {
  type ICellData,
  type Injector,
  type IStyleData,
  ObjectMatrix,
  type Worksheet,
} from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import type { GivenCell } from "../engine/cells";
import { raw, type WorkbookCells } from "../engine/workbook-cells";
import type { Holding } from "../holding/holding";
import type { IsHeld } from "../holding/held-terms";
import { lookFinder } from "./file-looks";
import { styleName } from "./file-style";
import { type FilterState, filtersIn, hiddenIn } from "./filter-state";
import { heightsGiven } from "./given-heights";
import type { SpillState } from "./spill-state";
import type { PrintState } from "./print-state";
import { type TableState, tablesOn } from "./tables-in-grid";

export interface CellState {
  /** Typed, or the result of the formula. */
  readonly value: GivenCell;
  /** With its equals sign; "" when there is none. */
  readonly formula: string;
  /** It is not worked out here: see holding/holding.ts. */
  readonly isHeld: boolean;
  /** Programs may not agree on its result of now. */
  readonly isDoubtful: boolean;
  /** It goes by the clock, and the value is the file's, of another day. */
  readonly isOfAnotherDay?: true;
  readonly style: IStyleData | undefined;
  /** The very look of the file that it has, or began as. */
  readonly fileLook: number | undefined;
  readonly note: string;
  /** Of what the file hangs on this cell: a name that goes with it, the cell's address of once. */
  readonly hanging?: string;
  readonly words: readonly string[] | undefined;
  /** What is printed, from this cell on. */
  readonly print: PrintState | undefined;
}

/** Where an answer that spilled had to go, the grid leaves an empty text: that is nothing typed. */
function held(data: ICellData): GivenCell {
  const value = raw(data);
  return value === "" ? null : value;
}

/** Something was typed where the answer would spill: the formula has its own cell alone. */
const isBlocked = (value: GivenCell): boolean =>
  typeof value === "object" && value !== null && value.basicValue === "#SPILL!";

export interface SheetState {
  readonly name: string;
  /** By row, then by column. */
  readonly cells: ReadonlyMap<number, ReadonlyMap<number, CellState>>;
  /** By row, then by column, of the formula. */
  readonly spills: ReadonlyMap<number, ReadonlyMap<number, SpillState>>;
  /** Pixels, of each column with a width of its own. */
  readonly widths: ReadonlyMap<number, number>;
  /** What columns are filtered by, and the rows that do not show. */
  readonly filters: readonly FilterState[];
  readonly hidden: ReadonlySet<number>;
  /** Pixels, of each row that somebody gave a height. */
  readonly heights: ReadonlyMap<number, number>;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly tables: readonly TableState[];
  /** What a cell of this column looks like that has no style of its own. */
  readonly emptyStyle: (column: number) => IStyleData | undefined;
  /** A look of the file as the grid has it. */
  readonly fileStyle: (look: number) => IStyleData | undefined;
}

export interface GridState {
  readonly sheets: readonly SheetState[];
  /** Defined names and what they refer to, with an equals sign. */
  readonly names: ReadonlyMap<string, string>;
  /** The engine did not come to an end: what the formulas show may be of before. */
  readonly isStopped: boolean;
}

type Rows<T> = Map<number, Map<number, T>>;

function put<T>(rows: Rows<T>, row: number, column: number, value: T): void {
  let found = rows.get(row);
  if (!found) rows.set(row, (found = new Map<number, T>()));
  found.set(column, value);
}

class SheetReader {
  private readonly name: string;

  constructor(
    private readonly cells: WorkbookCells,
    private readonly sheet: Worksheet,
    private readonly holding: Holding | undefined,
    private readonly isDoubtful: IsHeld,
    private readonly lookOf: ReturnType<typeof lookFinder>,
  ) {
    this.name = sheet.getName();
  }

  private cell(row: number, column: number, data: ICellData): CellState {
    const hasFormula = Boolean(data.f ?? data.si);
    const words: unknown = data.custom?.words;
    const note: unknown = data.custom?.note;
    const hanging: unknown = data.custom?.hanging;
    const style = this.styleOf(data);
    return {
      value: held(data),
      formula: hasFormula ? this.cells.formula({ sheet: this.name, row, column }) : "",
      isHeld: this.holding?.reasonAt(this.sheet.getSheetId(), row, column) !== undefined,
      isDoubtful: hasFormula && this.isDoubtful(this.sheet.getSheetId(), row, column),
      style,
      fileLook: this.lookOf(style),
      note: typeof note === "string" ? note : "",
      ...(typeof hanging === "string" ? { hanging } : {}),
      words: Array.isArray(words) ? (words as string[]) : undefined,
      print: data.custom?.print as PrintState | undefined,
    };
  }

  private styleOf(data: Pick<ICellData, "s"> | undefined): IStyleData | undefined {
    return this.cells.names.workbook.getStyles().getStyleByCell(data) ?? undefined;
  }

  private spills(): Rows<SpillState> {
    const found: Rows<SpillState> = new Map<number, Map<number, SpillState>>();
    for (const { top, left, bottom, right } of this.cells.spills(this.name)) {
      if (isBlocked(this.cells.value({ sheet: this.name, row: top, column: left }))) continue;
      const values = Array.from({ length: bottom - top + 1 }, (_, row) =>
        Array.from({ length: right - left + 1 }, (__, column) =>
          this.cells.value({ sheet: this.name, row: top + row, column: left + column }),
        ),
      );
      put(found, top, left, { rows: bottom - top + 1, columns: right - left + 1, values });
    }
    return found;
  }

  read(tables: readonly TableState[]): SheetState {
    const cells: Rows<CellState> = new Map<number, Map<number, CellState>>();
    new ObjectMatrix(this.sheet.getCellMatrix().getMatrix()).forValue((row, column, data) => {
      if (data) put(cells, row, column, this.cell(row, column, data));
    });
    const { columnData, rowData, freeze, defaultStyle } = this.sheet.getConfig();
    const columns = Object.entries(columnData).map(
      ([column, data]) => [Number(column), data] as const,
    );
    const styles = new Map(columns.map(([column, data]) => [column, this.styleOf(data ?? {})]));
    const usual = this.styleOf({ s: defaultStyle });
    return {
      name: this.name,
      cells,
      spills: this.spills(),
      widths: new Map(columns.flatMap(([column, data]) => (data?.w ? [[column, data.w]] : []))),
      heights: heightsGiven(rowData),
      hidden: hiddenIn(rowData),
      filters: filtersIn(this.sheet),
      frozenRows: Math.max(0, freeze.ySplit),
      frozenColumns: Math.max(0, freeze.xSplit),
      tables,
      emptyStyle: (column) => styles.get(column) ?? usual,
      fileStyle: (look) => this.styleOf({ s: styleName(look) }),
    };
  }
}

/** Results are only there once they are worked out: wait for them first. */
export function gridState(
  injector: Injector,
  cells: WorkbookCells,
  holding?: Holding,
  isStopped = false,
): GridState {
  const { workbook, unit } = cells.names;
  const names = Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(unit) ?? {});
  const styles = workbook.getStyles();
  const lookOf = lookFinder((s) => styles.getStyleByCell({ s }) ?? undefined);
  const isDoubtful = holding?.doubtful() ?? (() => false);
  return {
    sheets: workbook
      .getSheets()
      .map((sheet) =>
        new SheetReader(cells, sheet, holding, isDoubtful, lookOf).read(
          tablesOn(injector, unit, sheet.getSheetId()),
        ),
      ),
    names: new Map(
      names.map(({ name, formulaOrRefString }) => [
        name,
        formulaOrRefString.startsWith("=") ? formulaOrRefString : `=${formulaOrRefString}`,
      ]),
    ),
    isStopped,
  };
}
