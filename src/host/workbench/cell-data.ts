/** What a cell is to hold, as the engine is told it. */
import { CellValueType, type ICellData } from "@univerjs/core";
import { textType } from "../../workbench/engine/cells";
import { cellStyle } from "../../workbench/look";
import type { Block, Content } from "../../sheet/port";

function valueData(value: string | number | boolean): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, f: null };
  if (typeof value === "boolean") return { v: Number(value), t: CellValueType.BOOLEAN, f: null };
  if (value === "") return { v: null, t: null, f: null };
  // a text stays a text, whatever it begins with
  return { v: value, t: textType(value), f: null };
}

function cellData(content: Exclude<Content, { kind: "keep" }>): ICellData {
  const data =
    content.kind === "formula" ? { f: content.formula, v: null } : valueData(content.value);
  const { style, format } = content;
  const look = cellStyle({ ...(style ? { style } : {}), ...(format ? { format } : {}) });
  return look ? { ...data, s: look } : data;
}

/** What is written, by place; of a cell that is kept the engine is told nothing. None: nothing is. */
export function cellsSet(
  { row, column }: Block,
  contents: readonly (readonly Content[])[],
): Record<number, Record<number, ICellData>>[] {
  const found: Record<number, Record<number, ICellData>> = {};
  for (const [down, cells] of contents.entries()) {
    for (const [across, content] of cells.entries()) {
      if (content.kind === "keep") continue;
      (found[row + down] ??= {})[column + across] = cellData(content);
    }
  }
  return Object.keys(found).length === 0 ? [] : [found];
}
