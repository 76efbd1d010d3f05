/**
 * What the embedded spreadsheet would keep of a workbook after it is gone: the service of its skeletons
 * holds the scene it was drawn on, with all that stood there, until another takes its place.
 */
import type { Injector } from "@univerjs/core";
import { SheetSkeletonService } from "@univerjs/sheets";

type Scene = Parameters<SheetSkeletonService["setScene"]>[1];

export function forgetUnit(injector: Injector, unit: string): void {
  injector.get(SheetSkeletonService).setScene(unit, undefined as unknown as Scene);
}
