/** Rows or columns put in or taken out: checked first, then done part by part, then read back. */
import type { Workbook } from "../../model";
import { refuse } from "../../problem";
import type { LinesAct } from "../act";
import { Lines } from "./lines";

const folded = (name: string): string => name.toLowerCase();

export function withLines(opened: Workbook, act: LinesAct): Workbook {
  const lines = new Lines(act);
  const sheet = opened.sheets.find(({ name }) => folded(name) === folded(act.sheet));
  if (!sheet) return refuse({ code: "no-sheet", name: act.sheet });
  if (sheet.kind !== "cells") return refuse({ code: "no-cells", sheet: sheet.name });
  if (sheet.isProtected) {
    const fields = { sheet: sheet.name, place: sheet.name, trouble: "protected" } as const;
    refuse({ code: "cannot-shift", ...fields });
  }
  return refuse({ code: "failed", detail: `${lines.axis}s cannot be moved yet` });
}
