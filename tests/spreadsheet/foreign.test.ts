/**
 * Foreign workbooks by chance, opened in the grid, some inputs changed, saved: every figure that was
 * worked out is LibreOffice's from the same inputs, and every other one is held, and the file asks to be
 * worked out where a held one may not hold any more. FOREIGN sets how many, FOREIGN_FROM the first seed.
 */
import { describe, expect, it } from "vitest";
import { Chance } from "../workbench/foreign/chance";
import { judge, resultsIn, type Verdict } from "../workbench/foreign/judge";
import { foreignWorkbook, log } from "../workbench/foreign/workbook";
import { inGrid } from "../workbench/file";
import { readCellName } from "../../src/xlsx/cell-address";
import { hasLibreOffice, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const count = Number(process.env.FOREIGN ?? 8);
const from = Number(process.env.FOREIGN_FROM ?? 1);
const atOnce = 60;

/** What is typed into inputs: figures, nothing, a word. */
const typed = (chance: Chance) => chance.one([2.5, 7, 0, 0.125, -3, null, 11, "oak"]);

async function batch(seeds: readonly number[]): Promise<Verdict[]> {
  const foreign = seeds.map(foreignWorkbook);
  const nameOf = (seed: number) => `foreign${String(seed)}`;
  const bare = shownBy(new Map(foreign.map((each) => [nameOf(each.seed), each.bytes()])), 0);
  const saved = new Map<string, Uint8Array>();
  const isHeld = new Map<string, (address: string) => boolean>();
  for (const each of foreign) {
    const name = nameOf(each.seed);
    const chance = new Chance(each.seed + 100_000);
    await inGrid(each.bytes(resultsIn(bare, name, each)), async (file) => {
      for (let edit = 0; edit < 4; edit += 1) {
        const place = readCellName(chance.one(each.inputs)) ?? { row: 0, column: 0 };
        await file.grid.type({ sheet: log, ...place }, [[typed(chance)]]);
      }
      saved.set(name, await file.saved());
      const held = file.holding.now();
      const doubtful = file.holding.doubtful();
      isHeld.set(name, (address) => {
        const { row, column } = readCellName(address) ?? { row: -1, column: -1 };
        return held(log, row, column) || doubtful(log, row, column);
      });
    });
  }
  const after = shownBy(saved, 0);
  return foreign.map((each) => {
    const name = nameOf(each.seed);
    const shown = resultsIn(after, name, each);
    return judge(
      each,
      saved.get(name) ?? new Uint8Array(),
      shown,
      isHeld.get(name) ?? (() => false),
    );
  });
}

describe.skipIf(!isInstalled && !isRequired)("a foreign workbook that was edited here", () => {
  it(
    "says nothing that LibreOffice would not work out from the same inputs, and nothing stale unmentioned",
    async () => {
      const verdicts: Verdict[] = [];
      for (let first = 0; first < count; first += atOnce) {
        const size = Math.min(atOnce, count - first);
        verdicts.push(...(await batch(Array.from({ length: size }, (_, at) => from + first + at))));
      }
      const sum = (of: (each: Verdict) => number) =>
        verdicts.reduce((all, each) => all + of(each), 0);
      console.info(
        `${count} workbooks: ${sum((v) => v.live)} formulas worked out, ${sum((v) => v.held)} held, of those ${sum((v) => v.stale)} no longer hold and are asked to be worked out`,
      );
      expect(verdicts.flatMap(({ wrong }) => wrong)).toEqual([]);
      expect(verdicts.flatMap(({ unmentioned }) => unmentioned)).toEqual([]);
      // it would be no use to hold everything
      expect(sum((v) => v.live)).toBeGreaterThan(count * 5);
    },
    // the engine and LibreOffice start as slowly for one
    60_000 + count * 20_000,
  );
});
