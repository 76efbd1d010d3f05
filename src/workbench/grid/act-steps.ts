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

type Where = "back" | "forth";
type Counts = Readonly<Record<Where, number>>;

const idOf = (where: Where): string => `titrebook.operation.${where}`;

const isStep = ({ redoMutations }: IUndoRedoItem): boolean =>
  redoMutations[0]?.id === idOf("forth");

export class ActSteps {
  /** Goes there, later; false where that cannot be now. */
  heard: ((where: Where) => boolean) | undefined;
  private counts: Counts = { back: 0, forth: 0 };
  private readonly history: IUndoRedoService;
  private readonly commands: ICommandService;

  constructor(
    injector: Injector,
    private readonly unit: () => string,
  ) {
    this.history = injector.get(IUndoRedoService);
    this.commands = injector.get(ICommandService);
    for (const where of ["back", "forth"] as const) {
      this.commands.registerCommand({
        id: idOf(where),
        type: CommandType.OPERATION,
        handler: () => this.heard?.(where) ?? false,
      });
    }
  }

  /** Of a workbook that was just shown, or once more. @param counts steps to take back, and to do again */
  begin(counts: Counts = this.counts): void {
    this.counts = counts;
    this.history.clearUndoRedo(this.unit());
    const step = () => {
      this.history.pushUndoRedo({
        unitID: this.unit(),
        undoMutations: [{ id: idOf("back"), params: {} }],
        redoMutations: [{ id: idOf("forth"), params: {} }],
      });
    };
    if (counts.back > 0) step();
    if (counts.forth === 0) return;
    step();
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
