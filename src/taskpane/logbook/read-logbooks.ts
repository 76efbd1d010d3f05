/** Every logbook of the workbook that is open, and what was remembered of each. */
import { type Block, type Host, isFault, type Sheet } from "../../sheet/port";
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { readRemembered } from "../../workbook/planning/logbook/remember-columns";
import {
  recogniseAt,
  recogniseSheet,
  type TableGuess,
  wholeSheet,
} from "../../adopt/recognising/recognise";
import {
  rememberedHeadingRows,
  rememberedMapping,
  rememberedSheet,
} from "../../adopt/recognising/remembered";
import { cellsFromAnswer, type SheetCells } from "../../adopt/recognising/sheet-cells";
import { isWithin, ourBlocks } from "./ours";
import type { Action } from "./state";
import type { ReadTable } from "./found-table";

/** More cells on one sheet are no logbook anybody keeps by hand. */
const mostCells = 2_000_000;

/** Sheets that this task wrote itself. */
const isOurs = (name: string): boolean =>
  name === rememberedSheet || /^Re-check report( \d+)?$/.test(name);

const isOffered = ({ name, used }: Sheet): boolean =>
  used !== undefined && !isOurs(name) && used.rows * used.columns <= mostCells;

interface OnSheet {
  readonly tables: readonly ReadTable[];
  /** Tables that are no logbook, and our own: taken when a person says so. */
  readonly others: readonly ReadTable[];
}

const nothing: OnSheet = { tables: [], others: [] };

/** Headings that a person pointed at and agreed to stand in no row that was guessed. */
function byHand(
  cells: SheetCells,
  guesses: readonly TableGuess[],
  rows: readonly (readonly unknown[])[],
): TableGuess[] {
  const [first] = guesses;
  const place = (first ?? wholeSheet(cells))?.place;
  if (!place) return [];
  const known = new Set(guesses.map((each) => each.place.headingRow));
  return [...rememberedHeadingRows(cells.sheet, rows)]
    .filter((row) => !known.has(row))
    .map((row) => recogniseAt(first?.turned ?? cells, row, place));
}

async function tablesOn(
  host: Host,
  { used }: Sheet,
  rows: readonly (readonly unknown[])[],
  ours: readonly Block[],
): Promise<OnSheet | Refusal> {
  if (!used) return nothing;
  const answer = await host.read([{ ask: "cells", block: used }]);
  if (isFault(answer)) return refused(faultSentence(answer));
  const [found] = answer;
  if (found?.kind !== "cells") return nothing;
  const cells = cellsFromAnswer(found);
  const guesses = recogniseSheet(cells);
  const read = (guess: TableGuess): ReadTable => ({
    guess,
    cells: guess.turned ?? cells,
    remembered: rememberedMapping(guess, rows),
  });
  const agreed = byHand(cells, guesses, rows)
    .map((guess) => ({ ...read(guess), isByHand: true as const }))
    .filter(({ remembered }) => remembered !== undefined);
  const isOffered = (guess: TableGuess): boolean =>
    guess.isLogbook && !isWithin(cells.sheet, guess.place, ours);
  const whole = guesses.length === 0 ? wholeSheet(cells) : undefined;
  return {
    tables: [...guesses.filter(isOffered).map(read), ...agreed],
    others: [...guesses.filter((each) => !isOffered(each)), ...(whole ? [whole] : [])].map(read),
  };
}

export async function readLogbooks(host: Host): Promise<Action> {
  const answer = await host.read([{ ask: "sheets" }]);
  if (isFault(answer)) return { do: "failed", sentence: faultSentence(answer) };
  const [sheets] = answer;
  if (sheets?.kind !== "sheets") return { do: "failed", sentence: "The sheets could not be read." };
  const remembered = await readRemembered(host);
  const rows = remembered && "values" in remembered ? remembered.values.slice(1) : [];
  const ours = await ourBlocks(host);
  const tables: ReadTable[] = [];
  const others: ReadTable[] = [];
  for (const sheet of sheets.sheets.filter(isOffered)) {
    const found = await tablesOn(host, sheet, rows, ours);
    if (isRefused(found)) return { do: "failed", sentence: found.sentence };
    tables.push(...found.tables);
    others.push(...found.others);
  }
  return { do: "found", tables, others };
}
