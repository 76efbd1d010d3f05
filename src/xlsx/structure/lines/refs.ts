/** Places of the sheet, as its parts write them in attributes: A1:C3, and several with spaces between. */
import type { Area } from "../../../sheet/area";
import { areaName } from "../../../sheet/cell-name";
import { readArea } from "../../cell-address";
import { refuse } from "../../problem";
import type { Lines } from "./lines";

export function areasOf(sqref: string): Area[] {
  const damaged = (): never =>
    refuse({ code: "damaged", part: "", detail: `${sqref.slice(0, 40)} is no place on a sheet` });
  const written = sqref.trim().split(/\s+/);
  return written[0] === "" ? [] : written.map((each) => readArea(each) ?? damaged());
}

/** Undefined when nothing is left of any of them. */
export function movedAreas(sqref: string, lines: Lines): string | undefined {
  const moved = areasOf(sqref).flatMap((area) => lines.area(area) ?? []);
  return moved.length === 0 ? undefined : moved.map(areaName).join(" ");
}

/** The same for what must stand somewhere: it goes where the next line went. */
export function nearAreas(sqref: string, lines: Lines): string {
  const { axis } = lines;
  const near = areasOf(sqref).map(
    (area) =>
      lines.area(area) ?? {
        ...area,
        [axis]: lines.near(area[axis]),
        [axis === "row" ? "rows" : "columns"]: 1,
      },
  );
  return [...new Set(near.map(areaName))].join(" ");
}
