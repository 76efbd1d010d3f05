/**
 * The workbench's embedded spreadsheet as a host. The same class serves the page and the headless
 * engine: it speaks to the engine's commands alone.
 */
import {
  CommandType,
  EDITOR_ACTIVATED,
  FOCUSING_FX_BAR_EDITOR,
  ICommandService,
  IContextService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
} from "@univerjs/core";
import { skip } from "rxjs";
import { SetRangeValuesMutation, SheetsSelectionsService } from "@univerjs/sheets";
import { settled } from "../workbench/engine/settled";
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
} from "../sheet/port";
import { isRefused } from "../sheet/refusal";
import { answer } from "./workbench/answers";
import { type HostFile, noFacts } from "./workbench/file-facts";
import { OneChange } from "./workbench/one-change";
import { formulasLast } from "./workbench/formulas-last";
import { commandsFor } from "./workbench/steps";

/** Milliseconds a calculation may take. */
const patience = 30_000;

export class WorkbenchHost implements Host {
  private readonly cells: WorkbookCells;
  private readonly commands: ICommandService;

  /** Something changed since results were last waited for. */
  private isUnsettled = true;

  /** @param file the file that is open, in the page; the headless engine has none */
  constructor(
    private readonly injector: Injector,
    private readonly file?: HostFile,
  ) {
    this.cells = new WorkbookCells(injector);
    this.commands = injector.get(ICommandService);
    this.commands.onCommandExecuted(({ type }) => {
      if (type === CommandType.MUTATION) this.isUnsettled = true;
    });
  }

  /** Waiting takes a quarter of a second even where nothing is worked out, so it is not done for nothing. */
  private async settled(): Promise<void> {
    if (!this.isUnsettled) return;
    await settled(this.injector, patience);
    this.isUnsettled = false;
  }

  capabilities(): Promise<Capabilities> {
    return Promise.resolve({
      kind: "capabilities",
      program: "this page",
      canWrite: true,
      hasFileBytes: this.file !== undefined,
      opensFiles: false,
      savesFiles: true,
      hasCharts: false,
    });
  }

  async read(questions: readonly Question[]): Promise<readonly Found[]> {
    await this.settled();
    return questions.map((question) =>
      answer(this.injector, this.cells, question, this.file?.facts() ?? noFacts),
    );
  }

  /** Each step is one command or several; one undo takes all of them back. */
  async write(_label: string, steps: readonly Step[]): Promise<undefined | Fault> {
    if (this.isBeingEdited()) return fault("being-edited");
    const failed = await this.allOrNothing(steps, () => undefined);
    if (failed) return failed;
    await this.settled();
    const last = steps.at(-1);
    if (last?.do !== "select") return undefined;
    if (steps.length === 1) this.file?.goneTo?.();
    this.file?.reveal?.(last.block);
    return undefined;
  }

  /**
   * Does steps that follow from what somebody did last: one undo takes both back. Nothing while a cell
   * is being edited, which is a fault, nor when a step fails: then what somebody did stands alone.
   * @param follow the steps, from what stands there now
   */
  async writeAlong(
    follow: (read: (question: Question) => Found) => Step[],
  ): Promise<undefined | Fault> {
    if (this.isBeingEdited()) return fault("being-edited");
    const facts = this.file?.facts() ?? noFacts;
    const steps = follow((question) => answer(this.injector, this.cells, question, facts));
    if (steps.length === 0) return undefined;
    return this.allOrNothing(steps, (change) => {
      change.takeUpLast();
    });
  }

  /** Even where a step throws, nothing of the change stays, and it is over. */
  private async allOrNothing(
    steps: readonly Step[],
    done: (change: OneChange) => void,
  ): Promise<undefined | Fault> {
    const { unit, workbook } = this.cells.names;
    const change = new OneChange(unit, workbook.getActiveSheet().getSheetId(), this.injector);
    let failed: Fault | undefined = fault("failed");
    try {
      failed = await this.doAll(formulasLast(steps), change);
    } finally {
      if (failed && !change.takeBack()) failed = fault("half-done");
    }
    if (failed) return failed;
    done(change);
    change.keep();
    return undefined;
  }

  /** Undo belongs to whatever is being typed then, and so would what is written. */
  private isBeingEdited(): boolean {
    const context = this.injector.get(IContextService);
    return [EDITOR_ACTIVATED, FOCUSING_FX_BAR_EDITOR].some((key) => context.getContextValue(key));
  }

  private async doAll(steps: readonly Step[], change: OneChange): Promise<Fault | undefined> {
    for (const step of steps) {
      const commands = commandsFor(this.injector, this.cells, step);
      if ("kind" in commands) return commands;
      for (const command of commands) {
        if (!(await change.execute(command))) return fault("failed", step.do);
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
    // another file is shown: nothing is as it was; the first that is told of is the one there now
    const file = this.injector
      .get(IUniverInstanceService)
      .getCurrentTypeOfUnit$(UniverInstanceType.UNIVER_SHEET)
      .pipe(skip(1))
      .subscribe((shown) => {
        this.isUnsettled = true;
        if (!shown) return;
        heard({ event: "workbook" });
        heard({ event: "change" });
      });
    return () => {
      selection.unsubscribe();
      change.dispose();
      file.unsubscribe();
    };
  }

  /** A fault names the sentence that says why. */
  async fileBytes(): Promise<Uint8Array | Fault> {
    if (!this.file) return fault("not-offered", "this page");
    if (this.isBeingEdited()) return fault("being-edited");
    await this.settled();
    const bytes = await this.file.bytes();
    return isRefused(bytes) ? fault("failed", bytes.sentence) : bytes;
  }

  /** It would stand in the place of the one that is open. */
  openFile(): Promise<Fault> {
    return Promise.resolve(fault("not-offered", "this page"));
  }
}
