/** The embedded spreadsheet in its place on the page. Imported when the page is already readable. */
import "@univerjs/preset-sheets-core/lib/index.css";
import {
  type IDisposable as Disposable,
  ICommandService,
  type Injector,
  IUndoRedoService,
  IUniverInstanceService,
  type IWorkbookData,
  RedoCommand,
  UndoCommand,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { DeviceInputEventType, SetCellEditVisibleOperation } from "@univerjs/preset-sheets-core";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { ILayoutService } from "@univerjs/ui";
import type { Host } from "../../host/port";
import { WorkbenchHost } from "../../host/workbench";
import type { HostFile } from "../../host/workbench/file-facts";
import type { CellPlace } from "../../workbook/area";
import type { Working } from "../engine/steady/equip";
import { WorkbookCells } from "../engine/workbook-cells";
import { type GridState, gridState } from "../file/grid-state";
import type { Selection } from "../selection";
import { Edited } from "./edited";
import { editWhereTheCellStands } from "./editor-place";
import { forgetUnit } from "./forget-unit";
import { Guard } from "./guard";
import { listAllOfOurs } from "./list-all";
import { reveal, select } from "./select";
import { startEngine } from "./start-engine";
import { watchSelection } from "./watch-selection";

export interface Grid {
  /** What is known of the working out: formulas that failed, cells that are doubtful. */
  readonly working: Working;
  /** The workbook, as the pane's tasks reach it. */
  readonly host: Host;
  readonly cells: WorkbookCells;
  readonly edited: Edited;
  readonly guard: Guard;
  /** There is no room for columns that stay in view. */
  readonly isNarrow: boolean;
  /** Shows a workbook in place of the one that was there, and works it out. */
  show(snapshot: IWorkbookData, progress?: (percent: number) => void): Promise<GridState>;
  /** What it holds, once what was changed is worked out. */
  state(): Promise<GridState>;
  /** What was done so far cannot be undone any more. */
  forgetHistory(): void;
  /** Takes what is being typed in a cell as typed. */
  finishTyping(): Promise<void>;
  /** Puts the keyboard into the sheet. */
  focus(): void;
  /** Shows a cell and selects it. */
  select(place: CellPlace): void;
  undo(): void;
  redo(): void;
}

const isNarrow = (container: HTMLElement): boolean => container.clientWidth < 520;

/** Said when what the cells show may be older than what was typed. */
const stopped =
  "Working out this workbook stopped before its end: some results are old. Undo the last change, or open the file again.";

/** Milliseconds that working everything out may take. */
const patience = 180_000;

/** One workbook after another: what belongs to the one that goes must go with it. */
class Shown {
  private shown: Disposable | undefined;

  constructor(
    private readonly univer: Univer,
    private readonly cells: WorkbookCells,
    private readonly selection: Selection,
    private readonly working: Working,
  ) {}

  async show(snapshot: IWorkbookData, progress?: (percent: number) => void): Promise<GridState> {
    const injector = this.univer.__getInjector();
    const units = injector.get(IUniverInstanceService);
    const old = units
      .getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET)
      .map((unit) => unit.getUnitId());
    this.univer.createUnit<IWorkbookData, never>(UniverInstanceType.UNIVER_SHEET, snapshot);
    this.shown?.dispose();
    this.selection.set(undefined);
    for (const unit of old) {
      units.disposeUnit(unit);
      forgetUnit(injector, unit);
    }
    return this.settle(progress);
  }

  /** Returns what the new workbook holds once it is worked out, before anybody can change it. */
  async settle(progress?: (percent: number) => void): Promise<GridState> {
    const injector = this.univer.__getInjector();
    await worked(injector, this.working, progress);
    editWhereTheCellStands(injector, this.cells.names);
    this.shown = watchSelection(injector, this.cells, this.selection);
    return gridState(injector, this.cells);
  }
}

/** Waits for what is being worked out. */
async function worked(
  injector: Injector,
  working: Working,
  progress?: (percent: number) => void,
): Promise<void> {
  const session = injector.get(FormulaCalculationSessionService);
  const before = session.state.id;
  let said = -1;
  const heard = session.state$.subscribe(({ id, progress: now }) => {
    if (id === before || !now?.totalFormulasToCalculate) return;
    const tenths = Math.floor((10 * now.completedFormulasCount) / now.totalFormulasToCalculate);
    // read out, each of a hundred would be in the way of the next
    if (tenths <= said) return;
    said = tenths;
    progress?.(10 * tenths);
  });
  await session.waitForLatestApplied(patience).catch(() => working.failures.stopped());
  heard.unsubscribe();
}

/** Shows a first workbook in the container; resolves when every formula is worked out. */
export async function mountGrid(
  container: HTMLElement,
  firstOf: (isNarrow: boolean) => IWorkbookData,
  selection: Selection,
  file: HostFile,
  refused: (sentence: string) => void,
): Promise<{ readonly grid: Grid; readonly state: GridState }> {
  const { univer, working } = startEngine(container);
  working.failures.onStop(() => refused(stopped));
  const injector = univer.__getInjector();
  const narrow = isNarrow(container);
  // Until there is a first workbook the plugins have not begun, and nothing can be asked of them.
  univer.createUnit<IWorkbookData, never>(UniverInstanceType.UNIVER_SHEET, firstOf(narrow));
  const cells = new WorkbookCells(injector);
  const shown = new Shown(univer, cells, selection, working);
  const state = await shown.settle();
  listAllOfOurs(injector);
  const command = injector.get(ICommandService);
  // one for all: each of these listens to everything as long as the page
  const api = FUniver.newAPI(univer);
  const grid: Grid = {
    working,
    host: new WorkbenchHost(injector, {
      ...file,
      reveal: (block) => reveal(api, block, container.clientWidth),
    }),
    cells,
    edited: new Edited(injector, () => cells.names.unit),
    guard: new Guard(injector, cells, refused),
    isNarrow: narrow,
    show: (snapshot, progress) => shown.show(snapshot, progress),
    state: async () => {
      await worked(injector, working);
      return gridState(injector, cells);
    },
    forgetHistory: () => injector.get(IUndoRedoService).clearUndoRedo(cells.names.unit),
    finishTyping: async () => {
      const closing = { visible: false, eventType: DeviceInputEventType.PointerDown };
      await command.executeCommand(SetCellEditVisibleOperation.id, {
        ...closing,
        unitId: cells.names.unit,
      });
    },
    focus: () => injector.get(ILayoutService).focus(),
    select: (place) => select(api, place, container.clientWidth),
    undo: () => void command.executeCommand(UndoCommand.id),
    redo: () => void command.executeCommand(RedoCommand.id),
  };
  return { grid, state };
}
