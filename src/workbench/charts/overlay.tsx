/** Keeps the charts of the shown sheet over its cells, with what the cells hold. Loaded with the first chart. */
import "./charts.css";
import { type Injector, ICommandService, type IDisposable, type Workbook } from "@univerjs/core";
import { ScrollToCellCommand } from "@univerjs/preset-sheets-core";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { ILayoutService } from "@univerjs/ui";
import { createRoot } from "react-dom/client";
import type { ChartPicture, FileChart } from "../../xlsx/file-chart";
import type { WorkbookCells } from "../engine/workbook-cells";
import { drawnSheet, renderOf } from "./drawn-sheet";
import { Layer, type ShownChart } from "./layer";
import { livePicture } from "./live";
import { openCells } from "./open-cells";
import { isGone, rectOf } from "./places";

/** Milliseconds: changes that come in one go are looked at once. */
const pause = 60;

interface Told {
  readonly picture: ChartPicture;
  /** By which one sees whether anything changed. */
  readonly key: string;
}

/** What the mouse and the keyboard do on a chart is nothing to the cells under it; the wheel scrolls. */
function keepToItself(layer: HTMLElement, canvas: HTMLElement, back: () => void): void {
  for (const kind of ["pointerdown", "pointerup", "pointermove", "mousedown", "dblclick"]) {
    layer.addEventListener(kind, (event) => event.stopPropagation());
  }
  layer.addEventListener("contextmenu", (event) => {
    event.preventDefault();
    event.stopPropagation();
  });
  layer.addEventListener("keydown", (event) => {
    if (event.key === "Escape") back();
    if (event.key !== "Tab") event.stopPropagation();
  });
  layer.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      event.stopPropagation();
      canvas.dispatchEvent(new WheelEvent("wheel", event));
    },
    { passive: false },
  );
}

export class Overlay implements IDisposable {
  private readonly layer = document.createElement("div");
  private readonly root = createRoot(this.layer);
  private readonly told = new Map<FileChart, Told>();
  private readonly ends: (() => void)[] = [];
  private due: ReturnType<typeof setTimeout> | undefined;
  private drawn = "";

  constructor(
    private readonly injector: Injector,
    private readonly cells: WorkbookCells,
    private readonly workbook: Workbook,
    private readonly charts: readonly FileChart[],
  ) {
    const render = renderOf(injector, workbook);
    if (!render) return;
    const canvas = render.engine.getCanvasElement();
    this.layer.className = "chart-layer";
    canvas.parentElement?.append(this.layer);
    keepToItself(this.layer, canvas, () => injector.get(ILayoutService).focus());
    const frames = render.engine.endFrame$.subscribe(() => this.draw());
    const soon = () => {
      clearTimeout(this.due);
      this.due = setTimeout(() => this.readAgain(), pause);
    };
    const commands = injector.get(ICommandService).onCommandExecuted(soon);
    const worked = injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(soon);
    this.ends.push(
      () => frames.unsubscribe(),
      () => commands.dispose(),
      () => worked.unsubscribe(),
    );
    this.draw();
  }

  private get shown(): FileChart[] {
    const sheet = this.workbook.getActiveSheet().getName();
    return this.charts.filter((chart) => chart.sheet === sheet);
  }

  private readAgain(): void {
    let isOther = false;
    for (const chart of this.shown) {
      if (!chart.picture || !this.told.has(chart)) continue;
      const before = this.told.get(chart)?.key;
      if (this.tell(chart, chart.picture).key !== before) isOther = true;
    }
    if (isOther) this.drawn = "";
    this.draw();
  }

  private tell(chart: FileChart, now: ChartPicture): Told {
    const picture = livePicture(now, openCells(this.cells));
    const key = JSON.stringify(picture);
    const before = this.told.get(chart);
    const told = before?.key === key ? before : { picture, key };
    this.told.set(chart, told);
    return told;
  }

  private pictureOf(chart: FileChart): ChartPicture | undefined {
    return chart.picture && (this.told.get(chart) ?? this.tell(chart, chart.picture)).picture;
  }

  private draw(): void {
    const render = renderOf(this.injector, this.workbook);
    const drawn = render && drawnSheet(render, this.workbook);
    if (!drawn) return;
    const charts = this.shown.flatMap((chart): ShownChart[] => {
      const rect = rectOf(chart.anchor, drawn.lines);
      return isGone(rect) ? [] : [{ chart, rect, picture: this.pictureOf(chart) }];
    });
    const places = charts.map(({ rect }) => rect);
    const now = JSON.stringify([
      this.workbook.getActiveSheet().getSheetId(),
      drawn.geometry,
      places,
    ]);
    if (now === this.drawn) return;
    this.drawn = now;
    this.root.render(
      <Layer charts={charts} geometry={drawn.geometry} reveal={(chart) => this.reveal(chart)} />,
    );
  }

  private reveal({ anchor: { from, to } }: FileChart): void {
    const range = {
      startRow: from.row,
      endRow: to?.row ?? from.row,
      startColumn: from.column,
      endColumn: to?.column ?? from.column,
    };
    void this.injector.get(ICommandService).executeCommand(ScrollToCellCommand.id, { range });
  }

  dispose(): void {
    clearTimeout(this.due);
    for (const end of this.ends) end();
    // the root must not end while it draws
    setTimeout(() => this.root.unmount());
    this.layer.remove();
  }
}
