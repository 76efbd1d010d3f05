/** The cells a chart of a file refers to: 'Log book'!$A$2:$A$9, or several in brackets. */
import type { Block } from "../../sheet/area";
import { readArea } from "../../xlsx/cell-address";
import { limits } from "../../xlsx/limits";

const one = /^(?:'((?:[^']|'')+)'|([^'!,()[\]]+))!(\S+)$/;
/** Whole columns, and whole rows. */
const columns = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i;
const rows = /^\$?(\d{1,7}):\$?(\d{1,7})$/;

function areaOf(written: string): string {
  const [, from, to] = columns.exec(written) ?? [];
  if (from !== undefined && to !== undefined) return `${from}1:${to}${String(limits.rows)}`;
  const [, first, last] = rows.exec(written) ?? [];
  return first !== undefined && last !== undefined ? `A${first}:XFD${last}` : written;
}

/** Commas that stand in no sheet's name. */
const parts = (written: string): string[] => {
  const inside = /^\((.*)\)$/s.exec(written)?.[1] ?? written;
  return inside.match(/(?:'(?:[^']|'')*'|[^,'])+/g) ?? [];
};

/** Undefined where it is no such reference: a name, something lost, a cell of another workbook. */
export function blocksNamed(refersTo: string): Block[] | undefined {
  const found: Block[] = [];
  for (const part of parts(refersTo.trim())) {
    const [, quoted, plain, cells = ""] = one.exec(part.trim()) ?? [];
    const sheet = quoted?.replaceAll("''", "'") ?? plain;
    const area = readArea(areaOf(cells));
    if (sheet === undefined || !area || sheet.includes("[")) return undefined;
    found.push({ sheet, ...area });
  }
  return found.length > 0 ? found : undefined;
}
