/**
 * Lets a table of ours grow when something is typed or pasted right below it, with its formulas, as
 * spreadsheet programs do; the embedded one does not. One undo takes back both.
 */
import {
  CommandType,
  type ICellData,
  ICommandService,
  type Injector,
  ObjectMatrix,
} from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { type Block, fault, type Found, type Question, type Step } from "../../sheet/port";
import type { WorkbenchHost } from "../../host/workbench";
import { isChanging } from "../../host/workbench/one-change";
import { grownRows, isTableOfOurs } from "../../workbook/planning/grown-rows";
import type { Logbook } from "../../workbook/planning/snapshot";
import type { WorkbookCells } from "../engine/workbook-cells";

/** Milliseconds after which it is tried again where a cell is being edited. */
const later = 300;

const notGrown =
  "The row typed below the table did not become part of it: take it back, and type it again.";

/** A cell that something was put into. */
interface Written {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

const isFilled = (data: ICellData | null | undefined): boolean =>
  Boolean(data && ((data.v !== undefined && data.v !== null && data.v !== "") || data.f || data.p));

export class GrowTables {
  private written: Written[] = [];
  private isDue = false;
  /** Undo and redo write cells too, and take the table along by themselves. */
  private isUndoing = false;

  constructor(
    injector: Injector,
    private readonly cells: WorkbookCells,
    private readonly host: WorkbenchHost,
    private readonly say: (sentence: string) => void,
  ) {
    const commands = injector.get(ICommandService);
    const undoing = ["univer.command.undo", "univer.command.redo"];
    // an undo that breaks off is over when the next command begins
    commands.beforeCommandExecuted(({ id, type }) => {
      if (type === CommandType.COMMAND) this.isUndoing = undoing.includes(id);
    });
    commands.onCommandExecuted(({ id, params }, options) => {
      if (undoing.includes(id)) this.isUndoing = false;
      if (id !== SetRangeValuesMutation.id || this.isUndoing || isChanging(injector)) return;
      if (options?.fromFormula === true || options?.applyFormulaCalculationResult === true) return;
      this.note(params as Record<string, unknown>);
    });
  }

  private note({ unitId, subUnitId, cellValue }: Record<string, unknown>): void {
    const { names } = this.cells;
    if (unitId !== names.unit || typeof subUnitId !== "string") return;
    const sheet = names.workbook.getSheetBySheetId(subUnitId)?.getName();
    if (sheet === undefined) return;
    new ObjectMatrix<ICellData>(
      (cellValue ?? {}) as Record<number, Record<number, ICellData>>,
    ).forValue((row, column, data) => {
      if (isFilled(data)) this.written.push({ sheet, row, column });
    });
    if (this.written.length > 0 && !this.isDue) this.soon(0);
  }

  /** When what was done is in the history. */
  private soon(milliseconds: number): void {
    this.isDue = true;
    setTimeout(() => void this.grow(), milliseconds);
  }

  private async grow(): Promise<void> {
    this.isDue = false;
    const { written } = this;
    const failed = await this.host
      .writeAlong((read) => this.stepsFor(read, written))
      .catch(() => fault("failed"));
    if (failed?.code === "being-edited") {
      this.soon(later);
      return;
    }
    this.written = this.written.slice(written.length);
    if (failed) this.say(notGrown);
  }

  private stepsFor(read: (question: Question) => Found, written: readonly Written[]): Step[] {
    const names = read({ ask: "names" });
    if (names.kind !== "names") return [];
    const found = names.tables.map((name) => read({ ask: "table", name }));
    const tables = found.flatMap((each) => (each.kind === "table" ? [each] : []));
    return tables.flatMap((table) => {
      const { block } = table;
      const end = block.row + block.rows;
      const below = written.filter(
        ({ sheet, row, column }) =>
          sheet === block.sheet &&
          row >= end &&
          column >= block.column &&
          column < block.column + block.columns,
      );
      if (!below.some(({ row }) => row === end)) return [];
      const until = below.reduce((most, { row }) => Math.max(most, row), end);
      const wanted: Block = { ...block, rows: until - block.row + 1 };
      const cells = read({ ask: "cells", block: wanted });
      if (cells.kind !== "cells") return [];
      const others = tables.filter((each) => each !== table);
      const logbook: Logbook = { table, cells, others };
      return isTableOfOurs(logbook) ? grownRows(logbook, until) : [];
    });
  }
}
