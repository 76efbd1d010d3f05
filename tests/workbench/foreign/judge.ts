/** Held against LibreOffice: what a saved workbook says, and what LibreOffice makes of the same inputs. */
import { readCellName } from "../../../src/xlsx/cell-address";
import { opened } from "../file";
import { partsOf } from "../../xlsx/files";
import type { ShownFiles } from "../../spreadsheet/xlsx/libreoffice";
import { type Foreign, log } from "./workbook";

/** What LibreOffice shows in the cells of formulas, by address. */
export function resultsIn(shown: ShownFiles, name: string, foreign: Foreign): Map<string, string> {
  const sheet = shown.get(name)?.get(log) ?? [];
  const found = new Map<string, string>();
  for (const address of [...foreign.formulas.map((each) => each.address), ...foreign.answers]) {
    const { row, column } = readCellName(address) ?? { row: -1, column: -1 };
    found.set(address, sheet[row]?.[column] ?? "");
  }
  return found;
}

export interface Verdict {
  /** Figures that are not LibreOffice's, and are not held either. */
  readonly wrong: string[];
  /** Held figures that no longer hold, in a file that does not ask to be worked out anew. */
  readonly unmentioned: string[];
  /** Formulas whose result was brought up to date. */
  readonly live: number;
  readonly held: number;
  readonly stale: number;
}

function isSame(saved: unknown, shown: string): boolean {
  if (typeof saved === "number") {
    const other = Number(shown);
    if (shown === "" || Number.isNaN(other)) return false;
    const apart = Math.abs(saved - other);
    return apart <= 1e-9 * Math.max(Math.abs(saved), Math.abs(other)) || apart < 1e-12;
  }
  if (typeof saved === "boolean") return shown === (saved ? "TRUE" : "FALSE");
  if (typeof saved === "object" && saved !== null && "error" in saved) {
    return shown === saved.error || (saved.error === "#VALUE!" && shown.startsWith("Err:"));
  }
  return (saved ?? "") === shown;
}

/** @param isHeld the page does not work the cell out */
export function judge(
  foreign: Foreign,
  saved: Uint8Array,
  shown: ReadonlyMap<string, string>,
  isHeld: (address: string) => boolean,
): Verdict {
  const asksAnew = /fullCalcOnLoad="1"/.test(partsOf(saved)["xl/workbook.xml"] ?? "");
  const sheet = opened(saved).sheets.find(({ name }) => name === log);
  const cells = new Map(sheet?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]));
  const wrong: string[] = [];
  const unmentioned: string[] = [];
  let live = 0;
  let held = 0;
  let stale = 0;
  for (const { address, text } of foreign.formulas) {
    const { row, column } = readCellName(address) ?? { row: -1, column: -1 };
    const value = cells.get(`${row},${column}`);
    const expected = shown.get(address) ?? "";
    const says = `seed ${foreign.seed} ${address} =${text}: saved ${JSON.stringify(value)}, LibreOffice ${expected}`;
    if (isHeld(address)) {
      held += 1;
      if (isSame(value, expected)) continue;
      stale += 1;
      if (!asksAnew) unmentioned.push(says);
    } else {
      live += 1;
      // a function of the add-in is worked out here, and unknown there
      if (foreign.callsOurs && expected === "#NAME?") continue;
      if (!isSame(value, expected)) wrong.push(says);
    }
  }
  return { wrong, unmentioned, live, held, stale };
}
