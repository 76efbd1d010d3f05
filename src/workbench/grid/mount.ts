/** The embedded spreadsheet in its place on the page. Imported when the page is already readable. */
import "@univerjs/preset-sheets-core/lib/index.css";
import {
  ICommandService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  mergeLocales,
  RedoCommand,
  UndoCommand,
  Univer,
  UniverInstanceType,
} from "@univerjs/core";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { CalculationMode, FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import tableWords from "@univerjs/sheets-table/locale/en-US";
import { ILayoutService } from "@univerjs/ui";
import type { Host } from "../../host/port";
import { WorkbenchHost } from "../../host/workbench";
import type { Book } from "../../workbook/book";
import type { CellPlace } from "../engine/place";
import { descriptions, engineFunctions } from "../engine/registration";
import { WorkbookCells } from "../engine/workbook-cells";
import type { Selection } from "../selection";
import { snapshotOf } from "../snapshot";
import { editWhereTheCellStands } from "./editor-place";
import { listAllOfOurs } from "./list-all";
import { select } from "./select";
import { tableTheme, theme } from "./theme";
import { watchSelection } from "./watch-selection";

export interface Grid {
  /** The workbook, as the pane's tasks reach it. */
  readonly host: Host;
  readonly cells: WorkbookCells;
  /** Puts the keyboard into the sheet. */
  focus(): void;
  /** Shows a cell and selects it. */
  select(place: CellPlace): void;
  undo(): void;
  redo(): void;
}

const isNarrow = (container: HTMLElement): boolean => container.clientWidth < 520;

function start(container: HTMLElement): Univer {
  // Below this width they would stand over the names of the sheets.
  const hasRoom = container.clientWidth >= 760;
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, tableWords) },
    logLevel: LogLevel.ERROR,
    theme,
  });
  const core = UniverSheetsCorePreset({
    container,
    // Its buttons have no names that can be read out; undo and redo stand in the page's own bar.
    toolbar: false,
    footer: { zoomSlider: hasRoom, menus: hasRoom },
    disableAutoFocus: true,
    formula: {
      function: engineFunctions,
      description: descriptions,
      initialFormulaComputing: CalculationMode.FORCED,
    },
  });
  for (const plugin of core.plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(...plugin);
    else univer.registerPlugin(plugin);
  }
  // Tables for structured references; their filter buttons would hide the headings.
  univer.registerPlugin(UniverSheetsTablePlugin, { userThemes: [tableTheme] });
  return univer;
}

/** Opens the book in the container; resolves when every formula is computed. */
export async function mountGrid(
  container: HTMLElement,
  book: Book,
  selection: Selection,
): Promise<Grid> {
  const univer = start(container);
  const injector = univer.__getInjector();
  univer.createUnit<IWorkbookData, never>(
    UniverInstanceType.UNIVER_SHEET,
    snapshotOf(book, { frozenColumns: !isNarrow(container) }),
  );
  const cells = new WorkbookCells(injector);
  await injector.get(FormulaCalculationSessionService).waitForLatestApplied(30_000);
  listAllOfOurs(injector);
  editWhereTheCellStands(injector, cells.names);
  watchSelection(injector, cells, selection);
  const command = injector.get(ICommandService);
  return {
    host: new WorkbenchHost(injector),
    cells,
    focus: () => injector.get(ILayoutService).focus(),
    select: (place) => select(univer, place, container.clientWidth),
    undo: () => void command.executeCommand(UndoCommand.id),
    redo: () => void command.executeCommand(RedoCommand.id),
  };
}
