/** Sheets whose rows have other heights now, drawn anew. */
import type { Injector } from "@univerjs/core";
import { IRenderManagerService, SheetSkeletonManagerService } from "@univerjs/preset-sheets-core";

export const redrawn =
  (injector: Injector) =>
  (unit: string, sheets: readonly string[]): void => {
    const shown = injector.get(IRenderManagerService).getRenderById(unit);
    const skeletons = shown?.with(SheetSkeletonManagerService);
    for (const sheetId of sheets) skeletons?.makeDirty({ sheetId });
    skeletons?.reCalculate();
  };
