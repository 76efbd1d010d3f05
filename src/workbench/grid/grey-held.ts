/**
 * What the file will not say is drawn in grey and slanted: a result of before, or one that is not saved.
 * A formula that has no result of before says so in its cell.
 */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type Injector,
  InterceptorEffectEnum,
  type IStyleData,
} from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Holding } from "../holding/holding";

/** Dark enough to be read: 5.3 to 1 on white. */
const grey: IStyleData = { cl: { rgb: "#6b6b6b" }, it: BooleanNumber.TRUE };

const withoutResult = { v: "not worked out", t: CellValueType.STRING };

const hasResult = ({ v }: ICellData): boolean => v !== undefined && v !== null && v !== "";

export function greyHeld(injector: Injector, holding: Holding): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style | InterceptorEffectEnum.Value,
    priority: 0,
    handler: (cell, { unitId, subUnitId, row, col, workbook }, next) => {
      if (!cell || !holding.isOf(unitId)) return next(cell);
      const isHeld = holding.reasonAt(subUnitId, row, col) !== undefined;
      if (!isHeld && !holding.doubtAt(subUnitId, row, col)) return next(cell);
      const own = workbook.getStyles().getStyleByCell(cell) ?? {};
      const isBare = isHeld && Boolean(cell.f ?? cell.si) && !hasResult(cell);
      return next({ ...cell, ...(isBare ? withoutResult : {}), s: { ...own, ...grey } });
    },
  });
}
