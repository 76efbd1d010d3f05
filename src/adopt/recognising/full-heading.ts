/** A heading with what stands above and below it: "Titres 1 (mL)". */
import type { TablePlace } from "./find-tables";
import { headingParts, unitAlone } from "./heading";
import { heldCell, type SheetCells } from "./sheet-cells";

const textAt = (cells: SheetCells, row: number | undefined, column: number): string => {
  if (row === undefined) return "";
  const { value } = heldCell(cells, row, column);
  return typeof value === "object" ? "" : String(value).trim();
};

/** The words above a heading that is only a number or a unit: the nearest to the left in the row above. */
function groupWords(cells: SheetCells, place: TablePlace, column: number): string {
  for (let at = column; at >= place.firstColumn; at -= 1) {
    const words = textAt(cells, place.groupRow, at);
    if (words !== "") return words;
    if (!isBare(textAt(cells, place.headingRow, at))) return "";
  }
  return "";
}

const isBare = (heading: string): boolean =>
  /^(?:no\.?|run|rep|#)?\s*#?\d{1,2}$/i.test(heading) ||
  /^(?:i{1,3}|[abc])$/i.test(heading) ||
  heading === "";

export function fullHeading(cells: SheetCells, place: TablePlace, column: number): string {
  const own = textAt(cells, place.headingRow, column);
  const group = isBare(own) ? groupWords(cells, place, column) : "";
  const words = [group, own].filter((each) => each !== "").join(" ");
  const unit = textAt(cells, place.unitsRow, column);
  const isUnit =
    unit !== "" && unitAlone(unit) !== undefined && headingParts(words).unit === undefined;
  return isUnit ? `${words} (${unit.replace(/[()[\]]/g, "")})`.trim() : words;
}
