/** What is not worked out here is drawn in grey and slanted: it is a result of before. */
import {
  BooleanNumber,
  type Injector,
  InterceptorEffectEnum,
  type IStyleData,
} from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Holding } from "../holding/holding";

/** Dark enough to be read: 5.3 to 1 on white. */
const grey: IStyleData = { cl: { rgb: "#6b6b6b" }, it: BooleanNumber.TRUE };

export function greyHeld(injector: Injector, holding: Holding): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority: 0,
    handler: (cell, { unitId, subUnitId, row, col, workbook }, next) => {
      const isHeld =
        !holding.isEmpty &&
        holding.isOf(unitId) &&
        holding.reasonAt(subUnitId, row, col) !== undefined;
      if (!cell || !isHeld) return next(cell);
      const own = workbook.getStyles().getStyleByCell(cell) ?? {};
      return next({ ...cell, s: { ...own, ...grey } });
    },
  });
}
