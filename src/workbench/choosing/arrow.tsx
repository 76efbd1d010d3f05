/** A button that hangs beside a cell of the grid, and goes with it when the sheet is scrolled. */
import "./arrow.css";
import type { IDisposable, Injector, Nullable } from "@univerjs/core";
import { ComponentManager, SheetCanvasPopManagerService } from "@univerjs/preset-sheets-core";
import type { Place } from "../../sheet/area";

const arrowKey = "titrebook.arrow";
const arrowName = "Choose from a list";

/** @returns puts it beside a cell, or takes it away */
export function dropArrow(
  injector: Injector,
  pressed: () => void,
): (place: Place | undefined) => void {
  const Arrow = () => (
    <button
      type="button"
      className="drop-arrow"
      aria-label={arrowName}
      tabIndex={-1}
      onClick={pressed}
      onPointerDown={(event) => event.preventDefault()}
    >
      ▾
    </button>
  );
  injector.get(ComponentManager).register(arrowKey, Arrow);
  let shown: Nullable<IDisposable>;
  return (place) => {
    shown?.dispose();
    shown = place
      ? injector.get(SheetCanvasPopManagerService).attachPopupToCell(place.row, place.column, {
          componentKey: arrowKey,
          direction: "horizontal",
          showOnSelectionMoving: true,
        })
      : undefined;
  };
}
