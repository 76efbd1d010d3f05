/** How a cell of a workbook of our own looks: in its file, and where it is shown without one. */
import type { Place } from "../sheet/area";
import type { BookCell, BookSheet, BookStyle } from "../sheet/book";
import { isWrapped } from "./new-heights";
import type { LookChange } from "./patch/edits";
import { namedLooks } from "./styles/named-looks";

const general = "General";

/** A text beside a figure keeps a little off it. */
const isBesideFigure = (left: BookCell | null | undefined, { format }: BookCell): boolean =>
  (format === undefined || format === general) &&
  left?.format !== undefined &&
  left.format !== general;

/** Figures stand in the middle of their row; sentences begin at its top. */
const vertical = (style: BookStyle): LookChange => {
  if (style === "title" || style === "heading") return {};
  return { vertical: style === "input" || style === "calculated" ? "center" : "top" };
};

/** Of a cell that stands alone: in a sheet, its neighbours and the column's width count as well. */
export const styledLook = (style: BookStyle): LookChange => ({
  ...namedLooks[style],
  wraps: style === "heading",
  ...vertical(style),
});

export function bookLook(sheet: BookSheet, cell: BookCell, at: Place): LookChange | undefined {
  const { style, align } = cell;
  if (style === undefined) return align && { horizontal: align };
  return {
    ...styledLook(style),
    wraps: isWrapped(sheet, at.row, at.column),
    ...(isBesideFigure(sheet.rows[at.row]?.[at.column - 1], cell)
      ? { horizontal: "left", indent: 1 }
      : {}),
    ...(align ? { horizontal: align } : {}),
  };
}
