/** Shows the charts of whichever workbook is open; what draws them comes with the first that has any. */
import {
  type Injector,
  type IDisposable,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import type { WorkbookCells } from "../engine/workbook-cells";
import { chartsOf } from "./in-snapshot";

export function watchCharts(injector: Injector, cells: WorkbookCells): void {
  let shown: IDisposable | undefined;
  let latest: Workbook | undefined;
  const show = async (workbook: Workbook): Promise<void> => {
    const charts = chartsOf(workbook.getSnapshot());
    if (charts.length === 0) return;
    const { Overlay } = await import(/* webpackChunkName: "charts" */ "./overlay");
    // another may have been opened meanwhile
    if (latest === workbook) shown = new Overlay(injector, cells, workbook, charts);
  };
  injector
    .get(IUniverInstanceService)
    .getCurrentTypeOfUnit$<Workbook>(UniverInstanceType.UNIVER_SHEET)
    .subscribe((workbook) => {
      if (!workbook || workbook === latest) return;
      shown?.dispose();
      shown = undefined;
      latest = workbook;
      // the canvas of a workbook is made after it
      setTimeout(() => void show(workbook).catch(() => undefined));
    });
}
