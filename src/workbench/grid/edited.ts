/** Is there anything in the grid that its file does not hold yet? Told of each change. */
import { ICommandService, type Injector } from "@univerjs/core";

/** The engine's own names of what a file is told of. */
const telling = new Set([
  "sheet.mutation.set-range-values",
  "sheet.mutation.reorder-range",
  "sheet.mutation.set-row-hidden",
  "sheet.mutation.set-row-visible",
  "sheet.mutation.set.numfmt",
  "sheet.mutation.remove.numfmt",
  "sheet.mutation.set-worksheet-col-width",
  "sheet.mutation.set-worksheet-row-height",
  "sheet.mutation.set-frozen",
  "sheet.mutation.insert-sheet",
  "sheet.mutation.remove-sheet",
  "sheet.mutation.set-worksheet-name",
  "sheet.mutation.add-table",
  "sheet.mutation.delete-table",
  "sheet.mutation.set-sheet-table",
  "formula.mutation.set-defined-name",
  "formula.mutation.remove-defined-name",
]);

export class Edited {
  private isEdited = false;
  /** Edits so far, of all workbooks: tells one moment from another. */
  count = 0;
  private readonly listeners = new Set<() => void>();

  constructor(injector: Injector, unit: () => string) {
    injector.get(ICommandService).onCommandExecuted(({ id, params }, options) => {
      const isResult = options?.fromFormula === true || options?.applyFormulaCalculationResult;
      const isOurs = (params as { unitId?: unknown } | undefined)?.unitId === unit();
      if (telling.has(id) && isOurs && !isResult) this.edit();
    });
  }

  get now(): boolean {
    return this.isEdited;
  }

  /** Something was changed. */
  edit(): void {
    this.count += 1;
    this.isEdited = true;
    this.tell();
  }

  set(isEdited: boolean): void {
    if (isEdited === this.isEdited) return;
    this.isEdited = isEdited;
    this.tell();
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }

  watch(listener: () => void): void {
    this.listeners.add(listener);
  }
}
