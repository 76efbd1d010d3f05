/** Every logbook of the workbook that is open, and what was remembered of each. */
import { type Host, isFault, type Sheet } from "../../sheet/port";
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { readRemembered } from "../../workbook/planning/logbook/remember-columns";
import { recogniseSheet } from "../../adopt/recognising/recognise";
import { rememberedMapping, rememberedSheet } from "../../adopt/recognising/remembered";
import { cellsFromAnswer } from "../../adopt/recognising/sheet-cells";
import type { Action } from "./state";
import type { ReadTable } from "./found-table";

/** More cells on one sheet are no logbook anybody keeps by hand. */
const mostCells = 2_000_000;

/** Sheets that this task wrote itself. */
const isOurs = (name: string): boolean =>
  name === rememberedSheet || /^Re-check report( \d+)?$/.test(name);

const isOffered = ({ name, used }: Sheet): boolean =>
  used !== undefined && !isOurs(name) && used.rows * used.columns <= mostCells;

async function tablesOn(
  host: Host,
  { used }: Sheet,
  rows: readonly (readonly unknown[])[],
): Promise<ReadTable[] | Refusal> {
  if (!used) return [];
  const answer = await host.read([{ ask: "cells", block: used }]);
  if (isFault(answer)) return refused(faultSentence(answer));
  const [found] = answer;
  if (found?.kind !== "cells") return [];
  const cells = cellsFromAnswer(found);
  return recogniseSheet(cells)
    .filter(({ isLogbook }) => isLogbook)
    .map((guess) => ({
      guess,
      cells: guess.turned ?? cells,
      remembered: rememberedMapping(guess, rows),
    }));
}

export async function readLogbooks(host: Host): Promise<Action> {
  const answer = await host.read([{ ask: "sheets" }]);
  if (isFault(answer)) return { do: "failed", sentence: faultSentence(answer) };
  const [sheets] = answer;
  if (sheets?.kind !== "sheets") return { do: "failed", sentence: "The sheets could not be read." };
  const remembered = await readRemembered(host);
  const rows = remembered && "values" in remembered ? remembered.values.slice(1) : [];
  const tables: ReadTable[] = [];
  for (const sheet of sheets.sheets.filter(isOffered)) {
    const found = await tablesOn(host, sheet, rows);
    if (isRefused(found)) return { do: "failed", sentence: found.sentence };
    tables.push(...found);
  }
  return { do: "found", tables };
}
