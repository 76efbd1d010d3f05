/** Prints the sheet that is shown. Fetched when it is first asked for. */
import "./print.css";
import "../charts/charts.css";
import { flushSync } from "react-dom";
import { createRoot } from "react-dom/client";
import { chartsOf } from "../charts/in-snapshot";
import type { ShownChart } from "../charts/layer";
import { livePicture } from "../charts/live";
import { openCells } from "../charts/open-cells";
import { rectOf } from "../charts/places";
import type { WorkbookCells } from "../engine/workbook-cells";
import { shownSheet } from "./from-grid";
import { PrintView } from "./print-view";
import type { PrintState } from "../file/print-state";
import { printedSheet, type PrintSource } from "./printed";
import { printAsked, printOf } from "./sheet-print";

/** What came last, until the next: a browser may still be reading it. */
let end: (() => void) | undefined;

const sums =
  (size: (index: number) => number) =>
  (to: number): number =>
    Array.from({ length: to }, (_, index) => size(index)).reduce((sum, each) => sum + each, 0);

function chartsFor(cells: WorkbookCells, source: PrintSource): ShownChart[] {
  const lines = { left: sums(source.width), top: sums(source.height) };
  const snapshot = cells.names.workbook.getSnapshot();
  return chartsOf(snapshot)
    .filter(({ sheet, picture }) => sheet === source.name && picture !== undefined)
    .map((chart) => ({
      chart,
      rect: rectOf(chart.anchor, lines),
      picture: chart.picture && livePicture(chart.picture, openCells(cells)),
    }));
}

export function printShown(cells: WorkbookCells): void {
  end?.();
  const source = shownSheet(cells);
  const first = cells.names.workbook.getActiveSheet().getCellRaw(0, 0);
  const sheet = printedSheet(source, {
    ...printOf(cells.names.workbook.getSnapshot(), source.name),
    ...printAsked(first?.custom?.print as PrintState | undefined),
  });
  const paper = document.createElement("div");
  paper.className = "printed";
  if (sheet.isLandscape) paper.dataset.lying = "";
  document.body.append(paper);
  const root = createRoot(paper);
  flushSync(() => root.render(<PrintView sheet={sheet} charts={chartsFor(cells, source)} />));
  document.documentElement.dataset.printing = "";
  end = () => {
    end = undefined;
    delete document.documentElement.dataset.printing;
    root.unmount();
    paper.remove();
  };
  window.addEventListener("afterprint", () => end?.(), { once: true });
  window.print();
}
