/** A file as the page holds it over acts, undo and redo: the page's own parts in its order, without a page. */
import { ICommandService, RedoCommand, UndoCommand } from "@univerjs/core";
import { cellName } from "../../src/sheet/cell-name";
import { isRefused, type Refusal } from "../../src/sheet/refusal";
import { carriedHolds, carriedState } from "../../src/workbench/acts/carried";
import { stepWords } from "../../src/workbench/acts/act-words";
import { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { affectedIn } from "../../src/workbench/bar/held-list";
import { FileHolder } from "../../src/workbench/file/file-holder";
import { fileSnapshot } from "../../src/workbench/file/file-snapshot";
import { type GridState, gridState } from "../../src/workbench/file/grid-state";
import { type Coming, type Holder, Session } from "../../src/workbench/file/session";
import type { OpenedFile } from "../../src/workbench/file/opened-file";
import { ActSteps } from "../../src/workbench/grid/act-steps";
import { Holding } from "../../src/workbench/holding/holding";
import { layOut, layOutAgain } from "../../src/workbench/holding/lay-out";
import { doSort } from "../../src/workbench/sorting/do-sort";
import { planSort } from "../../src/workbench/sorting/plan-sort";
import type { StructuralAct } from "../../src/xlsx";
import { opened } from "./file";
import "../../src/workbench/engine/node";

function well<T extends object>(made: T | Refusal): T {
  if (isRefused(made)) throw new Error(made.sentence);
  return made;
}

interface Given {
  readonly row: number;
  readonly column: number;
  readonly formula?: string | undefined;
  readonly value?: unknown;
}

/** A line for each sheet, and for each cell that is not empty. */
export type Held = readonly string[];

const heldIn = (
  sheets: readonly { readonly name: string; readonly cells: readonly Given[] }[],
): Held =>
  sheets.flatMap(({ name, cells }) => [
    name,
    ...cells
      .flatMap(({ row, column, formula = "", value = null }) =>
        formula === "" && value === null
          ? []
          : [`${cellName(row, column)} ${formula} ${JSON.stringify(value)}`],
      )
      .sort(),
  ]);

export class Acting {
  private readonly holding = new Holding();
  private grid: HeadlessWorkbook | undefined;
  private steps: ActSteps | undefined;
  private session: Session | undefined;
  private shownTimes = 0;
  private wish: "back" | "forth" | undefined;

  static async on(bytes: Uint8Array): Promise<Acting> {
    const inside = new FileHolder();
    const holder = {
      ask: (asked: Parameters<Holder["ask"]>[0]) => Promise.resolve(inside.answer(asked)),
      close: () => undefined,
    } as Holder;
    const file = well(await holder.ask({ ask: "open", bytes })).is;
    const acting = new Acting();
    const state = await layOut(file, acting.holding, acting.show(file));
    acting.session = Session.ofFile("file", holder, file, state, acting.affected());
    return acting;
  }

  private get now() {
    const { grid, steps, session } = this;
    if (!grid || !steps || !session) throw new Error("Nothing is open.");
    return { grid, steps, session };
  }

  private affected() {
    if (!this.grid) throw new Error("Nothing is open.");
    return affectedIn({ holding: this.holding, cells: this.grid.cells });
  }

  private show(file: OpenedFile): Parameters<typeof layOut>[2] {
    return async (_, terms, isHeld) => {
      this.close();
      const unit = `shown-${String((this.shownTimes += 1))}`;
      const snapshot = fileSnapshot(file, { unit, name: "file", frozenColumns: true, isHeld });
      const { holding } = this;
      const grid = await HeadlessWorkbook.openSnapshot(snapshot, { holding, terms });
      this.grid = grid;
      this.steps = new ActSteps(grid.injector, () => grid.cells.names.unit);
      this.steps.heard = (where) => {
        this.wish = where;
        return true;
      };
      return this.seen();
    };
  }

  /** What it holds, where all is worked out. */
  private seen(): GridState {
    if (!this.grid) throw new Error("Nothing is open.");
    return gridState(this.grid.injector, this.grid.cells, this.holding);
  }

  /** The sheets, and the cells that hold something, with their formulas. */
  holds(): Held {
    const { sheets } = this.seen();
    return heldIn(
      sheets.map(({ name, cells }) => ({
        name,
        cells: [...cells].flatMap(([row, inRow]) =>
          [...inRow].map(([column, { formula, value }]) => ({ row, column, formula, value })),
        ),
      })),
    );
  }

  /** ... and in the file as it would be saved, or is. */
  async saves(ask: "save" | "try"): Promise<Held> {
    const { session } = this.now;
    const state = this.seen();
    const { bytes, arrays } = well(await session.written(state, ask));
    if (ask === "save") await session.keep(state, arrays);
    return heldIn(opened(bytes).sheets);
  }

  get sheet(): string {
    return this.now.grid.cells.names.sheets[0] ?? "";
  }

  async type(row: number, column: number, typed: number | null): Promise<void> {
    await this.now.grid.type({ sheet: this.sheet, row, column }, [[typed]]);
  }

  /** False where nothing was sorted. */
  async sort(direction: "up" | "down"): Promise<boolean> {
    const { grid } = this.now;
    const terms = { cells: grid.cells, holding: this.holding, fixed: undefined };
    const plan = planSort(terms, { sheet: this.sheet, row: 1, column: 0 }, direction);
    const isSorted = !isRefused(plan) && doSort(grid.injector, grid.cells, plan);
    await grid.computed();
    return isSorted;
  }

  async act(act: StructuralAct): Promise<void> {
    const { session } = this.now;
    const coming = well(await session.restructured(this.seen(), { ask: "act", act, says: act.do }));
    const { holding } = this;
    const holds = { ...carriedHolds(act, coming.opened, holding.now(), holding.differing()) };
    const again = { ...holds, isAll: holding.isAll };
    const state = await layOutAgain(coming.opened, again, holding, this.show(coming.opened));
    await this.took(coming, carriedState(act, coming.before, state, coming.opened), state);
  }

  private async took(
    { opened: file, counts }: Coming,
    agreed: GridState,
    shown: GridState,
  ): Promise<void> {
    await this.now.session.took(file, agreed, shown, this.affected());
    this.now.steps.begin(counts);
  }

  /** Says what was gone over; undefined where it was a step of the grid's own, or none. */
  async press(key: "undo" | "redo"): Promise<string | undefined> {
    const { grid, steps, session } = this.now;
    const { id } = key === "undo" ? UndoCommand : RedoCommand;
    this.wish = undefined;
    await grid.injector.get(ICommandService).executeCommand(id);
    const ask = this.wish as "back" | "forth" | undefined;
    if (!ask) {
      await grid.computed();
      return undefined;
    }
    const now = this.seen();
    const later = () => grid.computed().then(() => this.seen());
    const beyond = ask === "back" ? await steps.beyond(later) : undefined;
    const coming = well(await session.restructured(now, { ask, beyond, isCut: steps.isCut }));
    const state = await layOut(coming.opened, this.holding, this.show(coming.opened));
    await this.took(coming, state, state);
    return stepWords(ask, coming.step);
  }

  close(): void {
    this.grid?.close();
    this.grid = undefined;
  }
}
