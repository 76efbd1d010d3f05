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
import { commaHabit } from "../../adopt/recognising/comma-habit";
import type { Commas } from "../../adopt/recognising/typed-number";
import { isWithin, ourBlocks } from "./ours";
import type { Action } from "./state";
import type { ReadTable } from "./found-table";
import { type Offered, whichFirst } from "./which-first";

/** More cells on one sheet are no logbook anybody keeps by hand. */
const mostCells = 2_000_000;

/** Sheets that this task wrote itself. */
const isWrittenHere = (name: string): boolean =>
  name === rememberedSheet || /^Re-check report( \d+)?$/.test(name);

const isOffered = ({ name, used }: Sheet): boolean =>
  used !== undefined && !isWrittenHere(name) && used.rows * used.columns <= mostCells;

/** Headings that a person pointed at and agreed to stand in no row that was guessed. */
function byHand(
  cells: SheetCells,
  guesses: readonly TableGuess[],
  rows: readonly (readonly unknown[])[],
  commas: Commas,
): TableGuess[] {
  const [first] = guesses;
  const place = (first ?? wholeSheet(cells))?.place;
  if (!place) return [];
  const known = new Set(guesses.map((each) => each.place.headingRow));
  return [...rememberedHeadingRows(cells.sheet, rows)]
    .filter((row) => !known.has(row))
    .map((row) => recogniseAt(first?.turned ?? cells, row, place, commas));
}

async function cellsOf(host: Host, { used }: Sheet): Promise<SheetCells | Refusal | undefined> {
  if (!used) return undefined;
  const answer = await host.read([{ ask: "cells", block: used }]);
  if (isFault(answer)) return refused(faultSentence(answer));
  const [found] = answer;
  return found?.kind === "cells" ? cellsFromAnswer(found) : undefined;
}

function tablesOn(
  cells: SheetCells,
  commas: Commas,
  rows: readonly (readonly unknown[])[],
  ours: readonly Block[],
): Offered {
  const guesses = recogniseSheet(cells, commas);
  const isOurs = ({ place }: TableGuess): boolean => isWithin(cells.sheet, place, ours);
  const read = (guess: TableGuess): ReadTable => ({
    guess,
    cells: guess.turned ?? cells,
    remembered: rememberedMapping(guess, rows),
    ...(isOurs(guess) ? { isOurs: true as const } : {}),
  });
  const agreed = byHand(cells, guesses, rows, commas)
    .map((guess) => ({ ...read(guess), isByHand: true as const }))
    .filter(({ remembered }) => remembered !== undefined);
  const isOffered = (guess: TableGuess): boolean => guess.isLogbook && !isOurs(guess);
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
  const all: SheetCells[] = [];
  for (const sheet of sheets.sheets.filter(isOffered)) {
    const cells = await cellsOf(host, sheet);
    if (!cells) continue;
    if (isRefused(cells)) return { do: "failed", sentence: cells.sentence };
    all.push(cells);
  }
  const commas = commaHabit(all);
  const found = all.map((cells) => tablesOn(cells, commas, rows, ours));
  const offered = whichFirst({
    tables: found.flatMap(({ tables }) => tables),
    others: found.flatMap(({ others }) => others),
  });
  return { do: "found", ...offered };
}
