/**
 * The arrow beside a cell that has a list to choose from, and the keys that open it (Alt and the down
 * arrow). The list itself is fetched when it is first opened.
 */
import type { CellPlace } from "../../sheet/area";
import type { Grid } from "../grid/mount";
import { placeOf, type Selection } from "../selection";
import { dropArrow } from "./arrow";

export function offerLists(grid: Grid, selection: Selection): void {
  let at: CellPlace | undefined;
  let key = "";
  const open = (): void => {
    const place = at;
    if (!place) return;
    void import(/* webpackChunkName: "tools" */ "../tools/open").then(({ chooseFrom }) =>
      chooseFrom(grid, place),
    );
  };
  const arrow = dropArrow(grid.injector, open);
  const update = (): void => {
    const place = placeOf(selection.current());
    const has = place !== undefined && grid.lists.has(place);
    const now = has
      ? `${grid.cells.names.unit} ${place.sheet} ${String(place.row)} ${String(place.column)}`
      : "";
    if (now === key) return;
    key = now;
    at = has ? place : undefined;
    arrow(at);
  };
  selection.subscribe(update);
  window.addEventListener(
    "keydown",
    (event) => {
      const isAsked = event.altKey && event.key === "ArrowDown" && !event.ctrlKey;
      if (!isAsked || !at || grid.isTyping() || !grid.hasFocus()) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      open();
    },
    { capture: true },
  );
}
