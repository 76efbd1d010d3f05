/** The embedded spreadsheet in its place on the page. Imported when the page is already readable. */
import "@univerjs/preset-sheets-core/lib/index.css";
import {
  ICommandService,
  type Injector,
  type IWorkbookData,
  RedoCommand,
  UndoCommand,
  UniverInstanceType,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { ILayoutService } from "@univerjs/ui";
import type { Host } from "../../sheet/port";
import { WorkbenchHost } from "../../host/workbench";
import type { HostFile } from "../../host/workbench/file-facts";
import type { CellPlace } from "../../sheet/area";
import { watchCharts } from "../charts/watch-charts";
import type { Working } from "../engine/steady/equip";
import { WorkbookCells } from "../engine/workbook-cells";
import type { GridState } from "../file/grid-state";
import { Holding } from "../holding/holding";
import type { HeldTerms } from "../holding/held-terms";
import { surroundingsOf } from "../holding/surroundings";
import type { Selection } from "../selection";
import { stoppedWords } from "../bar/saved-words";
import { leaveDatesOut } from "./dates-unsummed";
import { Lists } from "../choosing/lists";
import { Edited } from "./edited";
import { Guard } from "./guard";
import { greyHeld } from "./grey-held";
import { GrowTables } from "./grow-tables";
import { watchLineKeys } from "./line-keys";
import { listAllOfOurs } from "./list-all";
import { ActSteps } from "./act-steps";
import { reveal, select } from "./select";
import { type View, viewOf } from "./view";
import { Shown } from "./shown";
import { startEngine } from "./start-engine";
import { tabsShownAfter } from "./tab-names";
import { goBackACell } from "../back-a-cell";
import { goToEndsOfText } from "../ends-of-text";
import { FitRows } from "../fit-rows";
import { keepKeysInFormulaLine } from "../formula-line";
import { endTypingAtNameBox, whyNoAddress } from "../name-box";
import { seeBeforeTyping } from "../seen-before-typing";
import { goToTheEnds } from "../to-the-ends";
import { takeAsTyped } from "./as-typed";
import { finishTyping, isTyping } from "./typing";
import { redrawn } from "../redrawn";
import { worked } from "./until-calculated";

export interface Grid {
  /** Of the embedded spreadsheet, for the tools. */
  readonly injector: Injector;
  /** Words to choose from in its cells. */
  readonly lists: Lists;
  /** What is known of the working out: formulas that failed, cells that are doubtful. */
  readonly working: Working;
  /** The workbook, as the pane's tasks reach it. */
  readonly host: Host;
  readonly cells: WorkbookCells;
  readonly edited: Edited;
  readonly guard: Guard;
  /** There is no room for columns that stay in view. */
  readonly isNarrow: boolean;
  /** Which cells are not worked out here, and why. */
  readonly holding: Holding;
  /** Shows a workbook in place of the one that was there, and works it out. */
  show(
    snapshot: IWorkbookData,
    terms: HeldTerms,
    progress?: (percent: number) => void,
    /** Where one is in it from the start. */
    view?: View,
  ): Promise<GridState>;
  /** Where one is; undefined where nothing is selected. */
  view(): View | undefined;
  /** Acts on rows, columns and sheets, in the order of the grid's own history. */
  readonly steps: ActSteps;
  /** What it holds, once what was changed is worked out. */
  state(): Promise<GridState>;
  /** Told whenever results have come into the cells. */
  onWorked(listener: () => void): void;
  /** What was done so far cannot be undone any more. */
  forgetHistory(): void;
  /** Takes what is being typed in a cell as typed. */
  finishTyping(): Promise<void>;
  /** Something is being typed in a cell. */
  isTyping(): boolean;
  /** The keyboard is in it. */
  hasFocus(): boolean;
  /** Puts the keyboard into the sheet. */
  focus(): void;
  /** Shows a cell and selects it. */
  select(place: CellPlace): void;
  undo(): void;
  redo(): void;
}

const isNarrow = (container: HTMLElement): boolean => container.clientWidth < 520;

/** Shows a first workbook in the container; resolves when every formula is worked out. */
export async function mountGrid(
  container: HTMLElement,
  firstOf: (isNarrow: boolean) => IWorkbookData,
  selection: Selection,
  file: HostFile,
  refused: (sentence: string) => void,
): Promise<{ readonly grid: Grid; readonly state: GridState }> {
  const holding = new Holding();
  const { univer, working } = startEngine(container, holding);
  working.failures.onStop(() => refused(stoppedWords));
  const injector = univer.__getInjector();
  const narrow = isNarrow(container);
  // Until there is a first workbook the plugins have not begun, and nothing can be asked of them.
  const first = firstOf(narrow);
  holding.begin(first.id, surroundingsOf(injector, first.id));
  univer.createUnit<IWorkbookData, never>(UniverInstanceType.UNIVER_SHEET, first);
  const cells = new WorkbookCells(injector);
  // one for all: each of these listens to everything as long as the page
  const api = FUniver.newAPI(univer);
  const rows = new FitRows(cells.names, redrawn(injector));
  const shown = new Shown(univer, cells, selection, holding, working.failures, api, () =>
    rows.fit(),
  );
  const state = await shown.settle({});
  listAllOfOurs(injector);
  greyHeld(injector, holding);
  leaveDatesOut(injector);
  watchCharts(injector, cells);
  injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(() => rows.fit());
  takeAsTyped(injector, () => cells.names.unit);
  goBackACell(injector, () => cells.names.unit);
  goToTheEnds(injector, cells);
  goToEndsOfText(injector);
  const revealed = (place: CellPlace) => reveal(api, place, container.clientWidth);
  seeBeforeTyping(injector, cells.names, revealed, () => isTyping(injector));
  const finish = () => finishTyping(injector, cells.names.unit);
  keepKeysInFormulaLine(injector, () => isTyping(injector));
  const wrongWith = whyNoAddress(injector, cells.names);
  endTypingAtNameBox(container, () => isTyping(injector), finish, wrongWith, refused);
  const command = injector.get(ICommandService);
  const host = new WorkbenchHost(injector, {
    ...file,
    reveal: revealed,
  });
  new GrowTables(injector, cells, host, refused);
  const guard = new Guard(
    injector,
    cells,
    tabsShownAfter(refused, container, cells, command),
    holding,
  );
  watchLineKeys(container, injector, cells, (act) => guard.acts?.(act));
  const steps = new ActSteps(injector, () => cells.names.unit);
  const grid: Grid = {
    injector,
    lists: new Lists(cells),
    working,
    host,
    cells,
    holding,
    edited: new Edited(injector, () => cells.names.unit),
    guard,
    isNarrow: narrow,
    show: (snapshot, terms, progress, view) => shown.show(snapshot, terms, progress, view),
    view: () => viewOf(api),
    steps,
    state: async () => {
      await worked(injector, working.failures);
      return shown.state();
    },
    onWorked: (listener) => {
      injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(listener);
    },
    forgetHistory: () => steps.begin({ back: 0, forth: 0 }),
    finishTyping: finish,
    isTyping: () => isTyping(injector),
    hasFocus: () => injector.get(ILayoutService).isFocused,
    focus: () => injector.get(ILayoutService).focus(),
    select: (place) => select(api, place, container.clientWidth),
    undo: () => void command.executeCommand(UndoCommand.id),
    redo: () => void command.executeCommand(RedoCommand.id),
  };
  return { grid, state };
}
