/**
 * Several of the engine's commands as one change. Its own way of taking them together would undo them
 * in the order they were done, and so take a sheet away before what stands on it. So what each command
 * leaves in the history is taken out again, and put back as one when all are done.
 */
import {
  ICommandService,
  type IMutationInfo,
  type Injector,
  IUndoRedoService,
  IUniverInstanceService,
  sequenceExecute,
} from "@univerjs/core";
import { RemoveSheetMutation, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { DeleteSheetTableMutation } from "@univerjs/sheets-table";

export interface Command {
  readonly id: string;
  readonly params: object;
  /** For a mutation, which leaves nothing in the history: what takes it back. */
  readonly back?: IMutationInfo;
}

const sheetOf = ({ params }: IMutationInfo): unknown =>
  (params as { subUnitId?: unknown } | undefined)?.subUnitId;

/** Going back, a sheet that was added goes whole: what stands on it need not be emptied first. */
function shortened(undo: readonly IMutationInfo[]): IMutationInfo[] {
  const added = undo.filter(({ id }) => id === RemoveSheetMutation.id).map(sheetOf);
  const whole: string[] = [RemoveSheetMutation.id, DeleteSheetTableMutation.id];
  return undo.filter((each) => whole.includes(each.id) || !added.includes(sheetOf(each)));
}

/** The workbooks that are being written to. */
const underWay = new WeakSet<Injector>();

/** Is a change of the pane's being made? What it writes is not what somebody typed. */
export const isChanging = (injector: Injector): boolean => underWay.has(injector);

export class OneChange {
  private readonly undo: IMutationInfo[] = [];
  private readonly redo: IMutationInfo[] = [];
  private readonly history: IUndoRedoService;
  private readonly commands: ICommandService;

  constructor(
    private readonly unit: string,
    /** The sheet that is shown before the change. */
    private readonly shownSheet: string,
    private readonly injector: Injector,
  ) {
    underWay.add(injector);
    this.history = injector.get(IUndoRedoService);
    this.commands = injector.get(ICommandService);
    // The history shows what belongs to the unit in focus alone.
    const units = injector.get(IUniverInstanceService);
    if (units.getFocusedUnit()?.getUnitId() !== unit) units.focusUnit(unit);
  }

  /** What was done last, by whoever, joins this change. */
  takeUpLast(): void {
    const last = this.history.pitchTopUndoElement();
    if (!last) return;
    this.undo.unshift(...last.undoMutations);
    this.redo.push(...last.redoMutations);
    this.history.popUndoToRedo();
  }

  /** Does one command. What it did joins this change. */
  async execute({ id, params, back }: Command): Promise<boolean> {
    const before = this.history.pitchTopUndoElement();
    const isDone = await this.commands
      .executeCommand<object, boolean>(id, params)
      .catch(() => false);
    for (
      let last = this.history.pitchTopUndoElement();
      last && last !== before;
      last = this.history.pitchTopUndoElement()
    ) {
      this.undo.unshift(...last.undoMutations);
      this.redo.push(...last.redoMutations);
      this.history.popUndoToRedo();
    }
    if (isDone && back) {
      this.undo.unshift(back);
      this.redo.push({ id, params });
    }
    return isDone;
  }

  private remember(undoMutations: IMutationInfo[], redoMutations: IMutationInfo[]): void {
    this.history.pushUndoRedo({ unitID: this.unit, undoMutations, redoMutations });
  }

  /** Now one undo takes all of it back, and goes back to the sheet that was shown. */
  keep(): void {
    underWay.delete(this.injector);
    if (this.undo.length === 0) return;
    const shown = { unitId: this.unit, subUnitId: this.shownSheet };
    // First of all: a sheet must not be taken away while it is the one shown.
    this.remember(
      [{ id: SetWorksheetActiveOperation.id, params: shown }, ...shortened(this.undo)],
      this.redo,
    );
  }

  /** Takes all of it back at once, and leaves nothing to undo or to redo. False when it cannot. */
  takeBack(): boolean {
    underWay.delete(this.injector);
    const { result } = sequenceExecute(shortened(this.undo), this.commands);
    // What was taken out of the history could be redone: remembering anything forgets that.
    this.remember([], []);
    this.history.popUndoToRedo();
    return result;
  }
}
