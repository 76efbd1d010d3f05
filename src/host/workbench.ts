/**
 * The workbench's embedded spreadsheet as a host. The same class serves the page and the headless
 * engine: it speaks to the engine's commands alone.
 */
import { ICommandService, type Injector, IUndoRedoService, UndoCommand } from "@univerjs/core";
import { SetRangeValuesMutation, SheetsSelectionsService } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { WorkbookCells } from "../workbench/engine/workbook-cells";
import {
  type Capabilities,
  type Event,
  fault,
  type Fault,
  type Found,
  type Host,
  type Question,
  type Step,
} from "./port";
import { answer } from "./workbench/answers";
import { commandsFor } from "./workbench/steps";

/** Milliseconds a calculation may take. */
const patience = 30_000;

export class WorkbenchHost implements Host {
  private readonly cells: WorkbookCells;
  private readonly commands: ICommandService;

  constructor(private readonly injector: Injector) {
    this.cells = new WorkbookCells(injector);
    this.commands = injector.get(ICommandService);
  }

  private computed(): Promise<unknown> {
    return this.injector.get(FormulaCalculationSessionService).waitForLatestApplied(patience);
  }

  capabilities(): Promise<Capabilities> {
    return Promise.resolve({
      kind: "capabilities",
      program: "the workbench",
      canWrite: true,
      groupsUndo: true,
      hasFileBytes: false,
      hasCharts: false,
    });
  }

  async read(questions: readonly Question[]): Promise<readonly Found[]> {
    await this.computed();
    return questions.map((question) => answer(this.injector, this.cells, question));
  }

  /** Each step is one command or several; the engine counts them as one change until let go. */
  async write(_label: string, steps: readonly Step[]): Promise<undefined | Fault> {
    const { unit } = this.cells.names;
    const together = this.injector.get(IUndoRedoService).__tempBatchingUndoRedo(unit);
    const failed = await this.doAll(steps);
    together.dispose();
    if (failed) {
      if (failed.done > 0) await this.commands.executeCommand(UndoCommand.id);
      return failed.why;
    }
    await this.computed();
    return undefined;
  }

  private async doAll(steps: readonly Step[]): Promise<{ done: number; why: Fault } | undefined> {
    let done = 0;
    for (const step of steps) {
      const commands = commandsFor(this.injector, this.cells, step);
      if ("kind" in commands) return { done, why: commands };
      for (const { id, params } of commands) {
        const isDone = await this.commands.executeCommand(id, params).catch(() => false);
        if (!isDone) return { done, why: fault("failed", step.do) };
        done += 1;
      }
    }
    return undefined;
  }

  watch(heard: (event: Event) => void): () => void {
    const selection = this.injector.get(SheetsSelectionsService).selectionChanged$.subscribe(() => {
      heard({ event: "selection" });
    });
    const change = this.commands.onCommandExecuted(({ id }) => {
      if (id === SetRangeValuesMutation.id) heard({ event: "change" });
    });
    return () => {
      selection.unsubscribe();
      change.dispose();
    };
  }

  fileBytes(): Promise<Fault> {
    return Promise.resolve(fault("not-offered", "the workbench"));
  }
}
