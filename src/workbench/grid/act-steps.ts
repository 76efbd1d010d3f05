/**
 * An act on rows, columns or sheets as a step of the grid's own history, so that undo and redo come to it
 * in its turn. The workbook of another file is shown then, and its history begins with these steps.
 */
import {
  CommandType,
  ICommandService,
  type Injector,
  IUndoRedoService,
  type IUndoRedoItem,
  RedoCommand,
  UndoCommand,
} from "@univerjs/core";

/** What the engine keeps inside: the oldest step stands first, and goes when one too many is pushed. */
interface Stacks {
  readonly _undoStacks: ReadonlyMap<string, IUndoRedoItem[]>;
}

type Where = "back" | "forth";
type Counts = Readonly<Record<Where, number>>;

const idOf = (where: Where): string => `titrebook.operation.${where}`;

const isStep = ({ redoMutations }: IUndoRedoItem): boolean =>
  redoMutations[0]?.id === idOf("forth");

export class ActSteps {
  /** Goes there, later; false where that cannot be now. */
  heard: ((where: Where) => boolean) | undefined;
  /** Of what was changed since the workbook was shown, the oldest cannot be undone by itself any more. */
  isCut = false;
  private counts: Counts = { back: 0, forth: 0 };
  /** The step back to before the last act. */
  private first: IUndoRedoItem | undefined;
  private readonly history: IUndoRedoService;
  private readonly commands: ICommandService;

  constructor(
    injector: Injector,
    private readonly unit: () => string,
  ) {
    this.history = injector.get(IUndoRedoService);
    this.commands = injector.get(ICommandService);
    this.history.undoRedoStatus$.subscribe(() => this.keepFirst());
    for (const where of ["back", "forth"] as const) {
      this.commands.registerCommand({
        id: idOf(where),
        type: CommandType.OPERATION,
        handler: () => this.heard?.(where) ?? false,
      });
    }
  }

  /** However much is typed after it, the act stays the first step: what was typed first makes room. */
  private keepFirst(): void {
    const { first, history } = this;
    if (!first) return;
    const steps = (history as unknown as Stacks)._undoStacks.get(first.unitID);
    const oldest = steps?.[0];
    if (!steps || !oldest || isStep(oldest)) return;
    steps[0] = first;
    this.isCut = true;
  }

  /** Of a workbook that was just shown, or once more. @param counts steps to take back, and to do again */
  begin(counts: Counts = this.counts): void {
    this.counts = counts;
    this.isCut = false;
    const step = {
      unitID: this.unit(),
      undoMutations: [{ id: idOf("back"), params: {} }],
      redoMutations: [{ id: idOf("forth"), params: {} }],
    };
    this.first = counts.back > 0 ? step : undefined;
    this.history.clearUndoRedo(this.unit());
    if (this.first) this.history.pushUndoRedo(this.first);
    if (counts.forth === 0) return;
    this.history.pushUndoRedo({ ...step });
    this.history.popUndoToRedo();
  }

  /**
   * What the grid would hold if all were done again that was taken back in it before it came to the step
   * that goes back; undefined where that is nothing. It is done again to be seen, and taken back.
   */
  async beyond<T>(seen: () => Promise<T>): Promise<T | undefined> {
    const { history, commands } = this;
    const next = () => history.pitchTopRedoElement();
    const last = next();
    if (!last || !isStep(last)) return undefined;
    history.popRedoToUndo();
    let count = 0;
    for (let each = next(); each && !isStep(each); each = next()) {
      if (!(await commands.executeCommand(RedoCommand.id))) break;
      count += 1;
    }
    const found = count > 0 ? await seen() : undefined;
    while (count > 0 && (await commands.executeCommand(UndoCommand.id))) count -= 1;
    history.popUndoToRedo();
    return found;
  }
}
