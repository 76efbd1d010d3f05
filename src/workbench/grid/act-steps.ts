/**
 * An act on rows, columns or sheets as a step of the grid's own history, so that undo and redo come to it
 * in its turn. The workbook of another file is shown then, and its history begins with these steps.
 */
import { CommandType, ICommandService, type Injector, IUndoRedoService } from "@univerjs/core";

type Where = "back" | "forth";

const idOf = (where: Where): string => `titrebook.operation.${where}`;

export class ActSteps {
  /** Goes there, later; false where that cannot be now. */
  heard: ((where: Where) => boolean) | undefined;
  private readonly history: IUndoRedoService;

  constructor(
    injector: Injector,
    private readonly unit: () => string,
  ) {
    this.history = injector.get(IUndoRedoService);
    const commands = injector.get(ICommandService);
    for (const where of ["back", "forth"] as const) {
      commands.registerCommand({
        id: idOf(where),
        type: CommandType.OPERATION,
        handler: () => this.heard?.(where) ?? false,
      });
    }
  }

  /** Of a workbook that was just shown. @param counts acts to take back, and to do again */
  begin({ back, forth }: Readonly<Record<Where, number>>): void {
    this.history.clearUndoRedo(this.unit());
    const step = () => {
      this.history.pushUndoRedo({
        unitID: this.unit(),
        undoMutations: [{ id: idOf("back"), params: {} }],
        redoMutations: [{ id: idOf("forth"), params: {} }],
      });
    };
    if (back > 0) step();
    if (forth === 0) return;
    step();
    this.history.popUndoToRedo();
  }
}
