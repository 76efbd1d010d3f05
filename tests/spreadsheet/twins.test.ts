/**
 * The plain-formula twin of every function, worked out by LibreOffice from results spoilt on purpose,
 * beside the function itself: the same to 1e-12, and an error wherever the function is an error.
 */
import { beforeAll, describe, expect, it } from "vitest";
import { isProblem, type Problem } from "../../src/core/problem/problem";
import type { Answer, CellValue } from "../../src/functions/answer";
import { grubbsProbability } from "../../src/core/replicates/grubbs";
import { catalogue } from "../../src/functions/catalogue";
import type { WorksheetFunction } from "../../src/functions/define";
import { goodArguments } from "../functions/good-arguments";
import { callsOf } from "./twins/calls";
import { rawBook, type RawCell } from "./twins/raw-book";
import { answerColumn, type Given, type Sheets, write, type Written } from "./twins/written";
import { hasLibreOffice, type Shown, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const nearness = 1e-12;

/** How a host hands over a cell. */
function handed(cell: RawCell): unknown {
  if (cell === null || typeof cell !== "object") return cell;
  if (cell.formula === '""') return "";
  return { type: "Error", basicValue: cell.formula === "NA()" ? "#N/A" : "#DIV/0!" };
}

function handedOver(given: Given): unknown {
  if (!given) return undefined;
  if ("constants" in given) return given.constants;
  return "literal" in given ? given.literal : given.cells.map((row) => row.map(handed));
}

/** An error of the program, but not a name it does not know. */
const isError = (shown: string | undefined): boolean =>
  shown !== undefined && /^(#|Err:)/.test(shown) && shown !== "#NAME?";

/** The sheet is read as text with so many decimals: what lies beyond is not to be seen. */
const lastDecimal = 5e-21;

/** Figures inside a sentence: one program writes 5E-07 where another writes 0.0000005. */
const sameFigures = (words: string): string =>
  words.replace(/\d+(\.\d+)?(e[+-]?\d+)?/gi, (figure) => String(Number(figure)));

function isSame(shown: string | undefined, wanted: CellValue, near: number): boolean {
  if (typeof wanted === "string") return sameFigures(shown ?? "") === sameFigures(wanted);
  if (typeof wanted === "boolean") return shown === String(wanted).toUpperCase();
  if (shown === undefined || shown === "" || Number.isNaN(Number(shown))) return false;
  return Math.abs(Number(shown) - wanted) <= near * Math.abs(wanted) + lastDecimal;
}

const rowsOf = (answer: Answer): readonly (readonly CellValue[])[] =>
  Array.isArray(answer) ? answer : [[answer]];

/** Half a unit in the last place of a double, relative. */
const ulp = 2 ** -53;

/** The same for strengths that lie close to a line: its scatter, and a slope close to none. */
function besideLine(wanted: Answer): number {
  const [strength = 0, , change = 0, scatter = 0] = rowsOf(wanted).map(([, figure]) =>
    Number(figure),
  );
  const slope = Math.abs((change * strength) / 3000);
  return 8 * ulp * strength * (1 / (scatter || Infinity) + 1 / (slope || Infinity));
}

/**
 * Doubles cannot know the scatter of figures that lie close together to 12 digits: what a rounding of
 * the readings makes of it is allowed on top, as far as it goes into p. All other answers: 1e-12.
 */
function nearnessOf(id: string, wanted: Answer | Problem, row: number): number {
  if (isProblem(wanted)) return nearness;
  if (id === "STRENGTHON") return nearness + besideLine(wanted);
  if (id === "CONTROL") {
    // a lower limit is what is left of the centre
    const [, centre = 0] = rowsOf(wanted).map(([, figure]) => Number(figure));
    const figure = Math.abs(Number(rowsOf(wanted)[row]?.[1]));
    return nearness * Math.max(1, centre / (figure || Infinity));
  }
  if (id !== "SPREAD") return nearness;
  const [count, mean, deviation] = rowsOf(wanted).map(([, figure]) => Number(figure));
  if (!count || !mean || !deviation) return nearness;
  const unsure = (8 * ulp * mean) / deviation;
  const g = Number(rowsOf(wanted)[7]?.[1]);
  if (row !== 10 || Number.isNaN(g)) return nearness + unsure;
  const p = grubbsProbability(g, count);
  if (p === 0) return nearness;
  return nearness + Math.abs(grubbsProbability(g * (1 - unsure), count) / p - 1);
}

/** What differs, in words; nothing where all is well. */
function differences(entry: WorksheetFunction, call: Written, shown: Shown): string[] {
  const { answer, row, given } = call;
  if (answer.kind === "value") return [];
  if (answer.kind === "none") return [answer.reason];
  const wanted: Answer | Problem = entry.evaluate(given.map(handedOver));
  const formulas = answer.kind === "table" ? answer.formulas : [[answer.formula]];
  const at = (down: number, across: number) => shown[row + down]?.[answerColumn + across];
  const asked = JSON.stringify(given.map((each) => (each && "cells" in each ? each.cells : each)));
  const wrong: string[] = [];
  formulas.forEach((line, down) => {
    line.forEach((formula, across) => {
      if (formula === undefined) return;
      const cell = isProblem(wanted) ? wanted : rowsOf(wanted)[down]?.[across];
      // A table is as large as its range, and spills only what is filled in.
      const isBeyond = cell === undefined;
      const isRight = isProblem(cell)
        ? isError(at(down, across))
        : isBeyond || isSame(at(down, across), cell, nearnessOf(entry.id, wanted, down));
      if (isRight) return;
      const should = isProblem(cell) ? `an error (${cell.fields.code})` : String(cell);
      wrong.push(`${entry.id} ${asked} [${down},${across}]: ${at(down, across)}, not ${should}`);
    });
  });
  return wrong;
}

/** The compatibility set: what spreadsheet programs of twenty years ago have. */
const known = new Set(
  "ABS AND AVERAGE CHOOSE CLEAN COUNT DEVSQ FDIST FIND FIXED GCD IF INDEX INT ISERROR ISLOGICAL ISNA ISNUMBER ISTEXT LARGE LEFT LEN LOG10 LOWER MATCH MAX MID MIN MOD NA NOT OR ROUND SMALL SQRT SUBSTITUTE SUM SUMPRODUCT SUMSQ TDIST TINV TRIM UPPER".split(
    " ",
  ),
);
const longest = 8192;

/** All calls of all functions in one opening of the program, on a machine that others use too, ms. */
const longestWait = 400_000;

describe.skipIf(!isInstalled && !isRequired)("the twins, worked out by LibreOffice,", () => {
  const sheets = new Map<string, Sheets>();
  let shown: ReadonlyMap<string, Shown> = new Map();

  beforeAll(() => {
    for (const entry of catalogue) {
      sheets.set(entry.id, write(entry, callsOf(entry, goodArguments(entry.id))));
    }
    const files = new Map(
      [...sheets].map(([id, { cells, helpers }]) => [
        id,
        rawBook({ [id]: cells, [`H${id}`]: helpers }),
      ]),
    );
    const all = shownBy(files, 0);
    shown = new Map([...all].map(([id, of]) => [id, of.get(id) ?? []]));
  }, longestWait);

  it.each(catalogue)("of $id use old functions alone, in formulas a cell can hold", ({ id }) => {
    const formulas = sheets.get(id)?.written.flatMap((call) => call.formulas) ?? [];
    expect(Math.max(0, ...formulas.map(({ length }) => length))).toBeLessThanOrEqual(longest);
    const code = formulas.map((formula) => formula.replace(/"[^"]*"/g, '""'));
    const used = code.flatMap((each) => each.match(/[A-Za-z_][\w.]*(?=\()/g) ?? []);
    expect([...new Set(used)].filter((name) => !known.has(name))).toEqual([]);
  });

  it.each(catalogue)(
    "of $id say what the function says, to 1e-12, and err where it errs",
    (entry) => {
      const { written = [] } = sheets.get(entry.id) ?? {};
      const wrong = written.flatMap((call) => differences(entry, call, shown.get(entry.id) ?? []));
      expect(wrong.slice(0, 12)).toEqual([]);
    },
  );
});
