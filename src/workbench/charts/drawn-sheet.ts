/** The sheet as the embedded spreadsheet has it on its canvas now: scrolled, enlarged, frozen. */
import type { Injector, Workbook } from "@univerjs/core";
import {
  type IRender,
  IRenderManagerService,
  SheetSkeletonManagerService,
} from "@univerjs/preset-sheets-core";
import type { Geometry, Lines } from "./places";

/** What the spreadsheet calls the part of its canvas that scrolls. */
const moving = "viewMain";

/** Its scroll bars, at the right and below. */
const scrollBar = 11;

export interface DrawnSheet {
  readonly geometry: Geometry;
  readonly lines: Lines;
}

/** Sums of widths, or of heights, up to the end of each. */
const lineAt =
  (sums: readonly number[]) =>
  (index: number): number =>
    index <= 0 ? 0 : (sums[Math.min(index, sums.length) - 1] ?? 0);

export const renderOf = (injector: Injector, workbook: Workbook): IRender | undefined =>
  injector.get(IRenderManagerService).getRenderById(workbook.getUnitId()) ?? undefined;

/** Undefined where it is not drawn. */
export function drawnSheet(render: IRender, workbook: Workbook): DrawnSheet | undefined {
  const skeleton = render.with(SheetSkeletonManagerService).getCurrentSkeleton();
  const main = render.scene.getViewport(moving);
  const canvas = render.engine.getCanvasElement();
  if (!skeleton || !main) return undefined;
  const left = lineAt(skeleton.columnWidthAccumulation);
  const top = lineAt(skeleton.rowHeightAccumulation);
  const { xSplit, ySplit, startRow, startColumn } = workbook.getActiveSheet().getFreeze();
  const [columns, rows] = [Math.max(0, xSplit), Math.max(0, ySplit)];
  const frozenLeft = columns > 0 ? left(startColumn - columns) : 0;
  const frozenTop = rows > 0 ? top(startRow - rows) : 0;
  return {
    lines: { left, top },
    geometry: {
      zoom: render.scene.scaleX,
      headerWidth: skeleton.rowHeaderWidth,
      headerHeight: skeleton.columnHeaderHeight,
      scrollX: main.viewportScrollX,
      scrollY: main.viewportScrollY,
      frozenLeft,
      frozenTop,
      frozenWidth: columns > 0 ? left(startColumn) - frozenLeft : 0,
      frozenHeight: rows > 0 ? top(startRow) - frozenTop : 0,
      width: canvas.clientWidth - scrollBar,
      height: canvas.clientHeight - scrollBar,
    },
  };
}
