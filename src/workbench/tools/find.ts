/** The window Find: Enter goes to the next cell that shows the text, Shift and Enter to the one before. */
import { counted } from "../../sheet/counted";
import { cellName } from "../../sheet/cell-name";
import { BooleanNumber } from "@univerjs/core";
import { type Bench, selected } from "./bench";
import { findAll, nextAfter } from "./finding";
import { made } from "./made";
import { field, labelled, panel, press } from "./panel";

let last = "";

export function find(bench: Bench): void {
  const { grid } = bench;
  const { cells } = grid;
  const { body } = panel(bench, "Find");
  const text = field(last, "search");
  const everywhere = field("", "checkbox");
  const tick = labelled("On all sheets", everywhere);
  tick.className = "tools-tick";
  const says = made("p");
  says.role = "status";
  const go = (isBack: boolean): void => {
    last = text.value;
    const shown = cells.names.workbook.getActiveSheet().getName();
    const visible = cells.names.workbook
      .getSheets()
      .filter((sheet) => sheet.isSheetHidden() !== BooleanNumber.TRUE)
      .map((sheet) => sheet.getName());
    const sheets = everywhere.checked ? visible : [shown];
    const found = findAll(cells, sheets, text.value);
    const from = selected(bench)?.cell ?? { sheet: shown, row: 0, column: -1 };
    const at = nextAfter(found, from, sheets, isBack);
    const place = found[at];
    if (!place) {
      says.textContent = `${text.value} is not on ${everywhere.checked ? "any sheet" : `the sheet ${shown}`}.`;
      return;
    }
    grid.select(place);
    const where = `${place.sheet} ${cellName(place.row, place.column)}`;
    says.textContent = `${where}: ${String(at + 1)} of ${counted(found.length, "cell")}.`;
    // the keyboard stays here, for the next one
    text.focus();
  };
  body.append(
    labelled("A text or a figure", text),
    tick,
    press("Next", () => go(false), "submit"),
    press("Previous", () => go(true)),
    says,
  );
  text.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || !event.shiftKey) return;
    event.preventDefault();
    go(true);
  });
  text.focus();
  text.select();
}
