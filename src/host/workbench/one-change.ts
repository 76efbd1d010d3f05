/**
 * Several of the engine's commands as one change. Its own way of taking them together would undo them
 * in the order they were done, and so take a sheet away before what stands on it.
 */
import {
  ICommandService,
  type IMutationInfo,
  type Injector,
  IUndoRedoService,
} from "@univerjs/core";

export interface Command {
  readonly id: string;
  readonly params: object;
  /** For a mutation, which leaves no history of its own: what takes it back. */
  readonly back?: IMutationInfo;
}

export class OneChange {
  private readonly undo: IMutationInfo[] = [];
  private readonly redo: IMutationInfo[] = [];
  private readonly history: IUndoRedoService;
  private readonly commands: ICommandService;

  constructor(
    private readonly unit: string,
    injector: Injector,
  ) {
    this.history = injector.get(IUndoRedoService);
    this.commands = injector.get(ICommandService);
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

  get isEmpty(): boolean {
    return this.undo.length === 0;
  }

  /** Now one undo takes all of it back. */
  close(): void {
    if (this.isEmpty) return;
    this.history.pushUndoRedo({
      unitID: this.unit,
      undoMutations: this.undo,
      redoMutations: this.redo,
    });
  }
}
