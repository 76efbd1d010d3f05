/** Workbooks to open: ours, other programs', an untidy one, and what chance makes. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Book, BookCell, BookSheet } from "../../../src/sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../../src/xlsx";
import type { Chance } from "../../endurance/chance";
import { root } from "../../rules/sources-of";

const sampleBytes = (name: string): Uint8Array =>
  readFileSync(join(root, `sample-workbooks/${name}.xlsx`));

const samples = ["logbook", "checks", "what-if", "partner-logbook", "old-logbook"];
const ofOthers = ["tidy", "office", "charts", "dynamic", "prefixed", "threaded", "pivot"];

const names = [
  "Ferry's log",
  "Öl & Lauge",
  "2026",
  "a-b (c)",
  "Kvöll, 1.5",
  "Titres <raw>",
  "lots",
];
const texts = [
  "  spaces  ",
  "<b>&amp;",
  "'quoted",
  "=not one",
  "007",
  "Saltmarsh\nFerries",
  "œuvre",
];

function cell(chance: Chance): BookCell | null {
  return chance.weighted<() => BookCell | null>([
    [3, () => null],
    [4, () => ({ value: chance.whole(-900, 900) / 100 })],
    [2, () => ({ value: chance.of(texts) })],
    [1, () => ({ value: chance.is(0.5) })],
    [1, () => ({ formula: "=SUM(A1:A3)*2", results: [[0]] })],
    [1, () => ({ formula: "=TITRE.ACIDVALUE(2.3,0.1,10)", results: [[1.29]] })],
  ])();
}

/** One to four sheets of up to fifty rows, nothing in its usual place. */
function byChance(chance: Chance): Uint8Array {
  const chosen = chance.some(names).slice(0, 4);
  const sheets = (chosen.length === 0 ? ["lots"] : chosen).map((name): BookSheet => {
    const columns = chance.whole(1, 9);
    const rows = Array.from({ length: chance.whole(1, 50) }, () =>
      Array.from({ length: columns }, () => cell(chance)),
    );
    return { name, rows, columnWidths: [], tables: [], frozenRows: chance.whole(0, 2) };
  });
  const book: Book = { name: "by chance", sheets };
  const bytes = newXlsx(book);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
}

export function bookToOpen(chance: Chance): { readonly name: string; readonly bytes: Uint8Array } {
  return chance.weighted<() => { name: string; bytes: Uint8Array }>([
    [
      3,
      () => {
        const name = chance.of(samples);
        return { name, bytes: sampleBytes(name) };
      },
    ],
    [
      4,
      () => {
        const name = chance.of(ofOthers);
        const path = join(root, `tests/second-opinion/xlsx/${name}.xlsx`);
        return { name, bytes: readFileSync(path) };
      },
    ],
    [3, () => ({ name: "chance", bytes: byChance(chance) })],
  ])();
}
