/** The embedded spreadsheet with what is ours in it: functions, colours, words; no workbook yet. */
import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import { CalculationMode } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import { keepFormulas } from "../engine/keep-formulas";
import { descriptions, engineFunctions } from "../engine/registration";
import { equipEngine, type Working } from "../engine/steady/equip";
import type { Holding } from "../holding/holding";
import { restWhenIdle } from "../resting";
import { menusWithout } from "./menus-without";
import { tableTheme, theme } from "./theme";
import { words } from "./locale";

export function startEngine(
  container: HTMLElement,
  holding: Holding,
): { univer: Univer; working: Working } {
  restWhenIdle();
  // Below this width they would stand over the names of the sheets.
  const hasRoom = container.clientWidth >= 760;
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: words },
    logLevel: LogLevel.ERROR,
    theme,
  });
  keepFormulas(univer);
  const core = UniverSheetsCorePreset({
    container,
    // Its buttons have no names that can be read out; undo and redo stand in the page's own bar.
    toolbar: false,
    footer: { zoomSlider: hasRoom, menus: hasRoom, statisticBar: hasRoom },
    disableAutoFocus: true,
    menu: menusWithout,
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
  return { univer, working: equipEngine(univer, holding) };
}
