/**
 * Stops what a saved file could not be told, before it is done, and says why. Commands are what a
 * person does; mutations are what comes of it, of undo, and of the pane's own writing.
 */
import {
  CustomCommandExecutionError,
  EDITOR_ACTIVATED,
  FOCUSING_FX_BAR_EDITOR,
  type ICellData,
  ICommandService,
  type ICommandInfo,
  IContextService,
  type IExecutionOptions,
  type Injector,
  type IRange,
  ObjectMatrix,
} from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import {
  AddWorksheetMergeMutation,
  InsertSheetMutation,
  SetRangeValuesMutation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import type { FileFacts } from "../../host/workbench/file-facts";
import type { StructuralAct } from "../../xlsx";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { Holding } from "../holding/holding";
import { actOfCommand, asksForAct } from "./act-of-command";
import { refusedCommands, sentences } from "./refused-commands";
import { tidy } from "./tidy";

/** What the open file holds that must stay as it is. */
export interface Fixed extends FileFacts {
  readonly sheets: ReadonlySet<string>;
  /** Sheets with rows or columns frozen in the file. */
  readonly frozen: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
  /** Why a cell of a sheet takes nothing else; undefined where it does. */
  refusesCell(sheet: string, row: number, column: number): string | undefined;
}

type Params = Record<string, unknown>;

/** Does it put something else into the cell, not only another look? */
const changesContent = (data: ICellData | null | undefined): boolean =>
  !data || "v" in data || "f" in data || "p" in data || "si" in data;

/** Stops a command without a word, since what it asked for is done in another way. */
const elsewhere = "It is done to the file.";

export class Guard {
  fixed: Fixed | undefined;
  /** Does what commands ask for that the grid is not let do: in the file. */
  acts: ((act: StructuralAct) => void) | undefined;

  constructor(
    private readonly injector: Injector,
    private readonly cells: WorkbookCells,
    private readonly refused: (sentence: string) => void,
    private readonly holding?: Holding,
  ) {
    injector.get(ICommandService).beforeCommandExecuted((command, options) => {
      tidy(command, options, cells);
      if (this.fixed && asksForAct(command.id) && this.isAct(command)) {
        throw new CustomCommandExecutionError(elsewhere);
      }
      const sentence = this.reason(command, options);
      if (sentence === undefined) return;
      this.refused(sentence);
      throw new CustomCommandExecutionError(sentence);
    });
  }

  /** An act was not done, for whatever reason: the tabs may show what was asked for. */
  say(sentence: string): void {
    this.refused(sentence);
  }

  /** True where it is done in the file, or there is nothing to do. */
  private isAct(command: ICommandInfo): boolean {
    const sheet = this.sheetIn((command.params ?? {}) as Params);
    const selected = this.injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    const isInFile = this.fixed?.sheets.has(sheet) === true;
    const act = actOfCommand(command, { selected, sheet, isInFile });
    // a sheet that was added and is in no file yet is named and taken away by the grid
    if (!act) return isInFile && !command.id.endsWith("set-worksheet-name");
    this.acts?.(act);
    return true;
  }

  private reason(command: ICommandInfo, options?: IExecutionOptions): string | undefined {
    const { fixed } = this;
    if (!fixed) return undefined;
    const known = refusedCommands.get(command.id);
    if (known !== undefined) return known;
    const params = (command.params ?? {}) as Params;
    switch (command.id) {
      case "sheet.command.set-frozen":
      case "sheet.command.cancel-frozen":
      case "sheet.command.set-selection-frozen":
      case "sheet.command.set-row-frozen":
      case "sheet.command.set-col-frozen":
      case "sheet.command.set-first-row-frozen":
      case "sheet.command.set-first-column-frozen":
        return fixed.frozen.has(this.sheetIn(params)) ? sentences.frozen : undefined;
      case "sheet.command.set-defined-name":
      case "sheet.command.remove-defined-name":
        return this.nameIn(params, fixed) ? sentences.names : undefined;
      case "sheet.command.insert-sheet":
        return fixed.isLocked ? "The workbook is protected: it takes no new sheets." : undefined;
      case "univer.command.cut":
        return this.isTyping() ? undefined : sentences.moving;
      case InsertSheetMutation.id:
        // where the file will have it: behind the others
        params.index = this.cells.names.sheets.length;
        return undefined;
      case AddWorksheetMergeMutation.id:
        // what is pasted brings its merging along: the rest of it is welcome
        params.ranges = [];
        return undefined;
      case SetRangeValuesMutation.id:
        return options?.applyFormulaCalculationResult === true || options?.fromFormula === true
          ? undefined
          : this.cellReason(params, fixed);
      default:
        return undefined;
    }
  }

  /** Cutting from a text is no moving of cells. */
  private isTyping(): boolean {
    const context = this.injector.get(IContextService);
    return [EDITOR_ACTIVATED, FOCUSING_FX_BAR_EDITOR].some((key) => context.getContextValue(key));
  }

  /** The sheet a command names, or else the one that is shown. */
  private sheetIn({ subUnitId }: Params): string {
    const { workbook } = this.cells.names;
    const named = typeof subUnitId === "string" ? workbook.getSheetBySheetId(subUnitId) : undefined;
    return (named ?? workbook.getActiveSheet()).getName();
  }

  /** A name that is given another text keeps its number. */
  private nameIn({ name, id }: Params, fixed: Fixed): boolean {
    const names = this.injector.get(IDefinedNamesService);
    const known =
      typeof id === "string" ? names.getValueById(this.cells.names.unit, id)?.name : undefined;
    return [name, known].some((given) => typeof given === "string" && fixed.names.has(given));
  }

  private cellReason(params: Params, fixed: Fixed): string | undefined {
    if (params.unitId !== this.cells.names.unit) return undefined;
    const sheet = this.sheetIn(params);
    if (!fixed.sheets.has(sheet)) return undefined;
    const merged = this.cells.names.sheet(sheet)?.getMergeData() ?? [];
    let found: string | undefined;
    new ObjectMatrix<ICellData>(
      (params.cellValue ?? {}) as Record<number, Record<number, ICellData>>,
    ).forValue((row, column, data) => {
      if (!changesContent(data)) return true;
      found =
        fixed.refusesCell(sheet, row, column) ??
        (this.holding?.isInArray(params.subUnitId as string, row, column) === true
          ? sentences.heldArray
          : undefined) ??
        coveredReason(merged, row, column, data);
      return found === undefined;
    });
    return found;
  }
}

/** Of merged cells, only the first holds anything. */
function coveredReason(
  merged: readonly IRange[],
  row: number,
  column: number,
  data: ICellData | null | undefined,
): string | undefined {
  if (data?.v === null || data?.v === undefined || data.v === "") return undefined;
  const isCovered = merged.some(
    ({ startRow, endRow, startColumn, endColumn }) =>
      startRow <= row &&
      row <= endRow &&
      startColumn <= column &&
      column <= endColumn &&
      (row !== startRow || column !== startColumn),
  );
  return isCovered ? "Merged cells hold one value: write in the first of them." : undefined;
}
