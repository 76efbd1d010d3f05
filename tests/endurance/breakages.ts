/**
 * The product broken on purpose, one line at a time: what the model of tests/endurance must notice.
 * Data; `npm run endure -- --broken` does each in a copy of its own.
 */
export interface Breakage {
  /** What goes wrong, as a person would tell it. */
  readonly what: string;
  readonly file: string;
  /** Stands there once. */
  readonly line: string;
  readonly broken: string;
  /** What must notice: a day of random use unless it is a week in a logbook's file, or a suite of tests. */
  readonly by?: "week" | `tests/${string}`;
}

const titrate = "src/taskpane/titrate";
const planning = "src/workbook/planning";
const lines = "src/xlsx/structure/lines";

export const breakages: readonly Breakage[] = [
  {
    what: "undo of a reading forgets the blanks",
    file: `${titrate}/undo.ts`,
    line: "draft: { ...bench.draft, titres, blanks, isRecorded: false },",
    broken: "draft: { ...bench.draft, titres, isRecorded: false },",
  },
  {
    what: "undo in the workbook forgets one cell",
    file: "tests/host/memory.ts",
    line: "this.show(last.before);",
    broken:
      "const all = structuredClone(last.before); const { cells } = all.sheets[0] ?? { cells: {} }; Reflect.deleteProperty(cells, Object.keys(cells)[0] ?? ''); this.show(all);",
  },
  {
    what: "what was typed last is not kept when the page closes",
    file: `${titrate}/drafts/keeper.ts`,
    line: "const latest = [waiting?.id === draft?.id ? undefined : waiting, draft].filter(",
    broken: "const latest = [draft].filter(",
  },
  {
    what: "a full disk is not told",
    file: `${titrate}/drafts/keeper.ts`,
    line: "last = last.then(() => isFailed).then(failed);",
    broken: "last = last.then(() => isFailed).then(() => failed(false));",
  },
  {
    what: "why a titre was omitted is not kept with the draft",
    file: `${titrate}/stored.ts`,
    line: '...(typeof omitted === "string" ? { omitted } : {}),',
    broken: "",
  },
  {
    what: "a changed reading is no longer omitted",
    file: `${titrate}/reducer.ts`,
    line: "...(was.omitted === undefined ? {} : { omitted: was.omitted }),",
    broken: "",
  },
  {
    what: "one of the recorded titrations too few stays at hand",
    file: `${titrate}/lots-kept.ts`,
    line: "const recordedKept = 5;",
    broken: "const recordedKept = 4;",
  },
  {
    what: "a titration that is changed stays recorded",
    file: `${titrate}/reducer.ts`,
    line: "return stays || !next.isRecorded ? next : { ...next, isRecorded: false };",
    broken: "return stays ? next : next;",
  },
  {
    what: "record writes into a row that is begun",
    file: `${planning}/record/target-row.ts`,
    line: "if (inputs.some((column) => isFilled(row, column))) continue;",
    broken: "if (inputs.every((column) => isFilled(row, column))) continue;",
  },
  {
    what: "an omitted titre is recorded as one that stands",
    file: `${titrate}/record.ts`,
    line: "return reading === undefined || reading.omitted !== undefined ? null : usedOf(reading);",
    broken: "return reading === undefined ? null : usedOf(reading);",
  },
  {
    what: "the reason of an omission is not recorded",
    file: "src/workbook/record/omitted-words.ts",
    line: "mL: ${reason.trim()}`,",
    broken: "mL`,",
  },
  {
    what: "what was typed after the look is not noticed",
    file: `${planning}/carry-out.ts`,
    line: "if (confirmed.fingerprint !== plan.fingerprint) {",
    broken: 'if (confirmed.fingerprint === "") {',
  },
  {
    what: "a row below the table is written over",
    file: `${planning}/record/target-row.ts`,
    line: 'if (inTheWay.length === 0 || choice === "first") return { row, isNew: true, inTheWay };',
    broken: "return { row, isNew: true, inTheWay: [] };",
  },
  {
    what: "a new column is written over what stands there",
    file: `${planning}/logbook/beside.ts`,
    line: "const held = inTheWay(found[0]);",
    broken: "const held = added.length > 99 ? inTheWay(found[0]) : undefined;",
  },
  {
    what: "a what-if table takes the size before",
    file: "src/workbook/what-if/layout.ts",
    line: 'value: size.toNumber(), style: "input" },',
    broken: 'value: (sizes[index - 1] ?? size).toNumber(), style: "input" },',
  },
  {
    what: "the blank is not taken off",
    file: "src/core/titration/corrected-titre.ts",
    line: 'return as("mL", mean(titres).minus(blank));',
    broken: 'return as("mL", mean(titres));',
  },
  {
    what: "the base charge counts tenfold",
    file: "src/core/batch/catalyst.ts",
    line: 'as("g", oilMass.times(ten).times(baseCharge));',
    broken: 'as("g", oilMass.times(hundred).times(baseCharge));',
  },
  {
    what: "a batch forgets its lots when the pane closes",
    file: "src/taskpane/batch/stored.ts",
    line: "lots: lotsFrom(value.lots),",
    broken: "lots: lotsFrom(value.lots).slice(1),",
  },
  {
    what: "a new file drops a sheet",
    file: "src/xlsx/new.ts",
    line: "book.sheets.flatMap((sheet, index) => sheetEdits(book, sheet, index)),",
    broken:
      "book.sheets.slice(0, Math.max(1, book.sheets.length - 1)).flatMap((sheet, index) => sheetEdits(book, sheet, index)),",
  },
  {
    what: "a copy drops the sheet of its workings",
    file: "src/partner/sharing/share.ts",
    line: "if (workings && report.workings !== undefined) {",
    broken: "if (workings && report.workings === undefined) {",
  },
  {
    what: "what stands below rows that are taken out stays where it was",
    file: `${lines}/lines.ts`,
    line: "const to = last < this.after ? Math.min(last, this.at - 1) : last + this.by;",
    broken: "const to = last < this.after ? Math.min(last, this.at - 1) : last;",
    by: "week",
  },
  {
    what: "a reference to a row that is taken out goes to the next one",
    file: `${lines}/lines.ts`,
    line: "if (line < this.after) return undefined;",
    broken: "if (line < this.after) return this.at;",
    by: "week",
  },
  {
    what: "a range does not grow with rows put in at its end",
    file: `${lines}/lines.ts`,
    line: "const [from, to] = [first, last].map((line) => (line < this.at ? line : line + this.by));",
    broken:
      "const [from, to] = [first, last].map((line) => (line < this.at ? line : line + this.by - (line === last ? 1 : 0)));",
    by: "week",
  },
  {
    what: "a sheet that is moved to the right comes one place too far",
    file: "src/xlsx/structure/sheets/move.ts",
    line: "const before = cells[to];",
    broken: "const before = cells[to + 1];",
    by: "week",
  },
  {
    what: "rows not begun are sorted among the others",
    file: "src/workbench/sorting/order.ts",
    line: "(isWaiting ? 2 : isBlank(key) ? 1 : 0);",
    broken: "(isWaiting ? 0 : isBlank(key) ? 0 : 0);",
    by: "week",
  },
  {
    what: "the largest first is the smallest first",
    file: "src/workbench/sorting/order.ts",
    line: 'const sign = direction === "up" ? 1 : -1;',
    broken: "const sign = 1;",
    by: "week",
  },
  {
    what: "a figure typed in an old logbook is held to ten times its digits",
    file: "src/adopt/recheck/reading/held-figure.ts",
    line: "halfDigit: Math.max(half, step ?? 0, (of.within ?? 0) * typed.value) * scale,",
    broken: "halfDigit: Math.max(half, step ?? 0) * scale * 0.1,",
    by: "tests/adopt",
  },
  {
    what: "a dose copied from above is not known for one",
    file: "src/adopt/recheck/reading/read-rows.ts",
    line: "return readsCells.test(formula) ? undefined : read(row - 1)?.value;",
    broken: "return readsCells.test(formula) ? undefined : read(row - 2)?.value;",
    by: "tests/adopt",
  },
  {
    what: "a cause that a right cell of the row speaks against is named",
    file: "src/adopt/recheck/judging/contradicted.ts",
    line: "return Math.abs(other - own) > each.halfDigit + 0.001 * Math.abs(own);",
    broken: "return Math.abs(other - own) > each.halfDigit + 1000 * Math.abs(own);",
    by: "tests/adopt",
  },
  {
    what: "the water of a batch is not recorded",
    file: "src/taskpane/batch/record.ts",
    line: 'water: figures.value("water"),',
    broken: "water: undefined,",
    by: "tests/taskpane/batch",
  },
  {
    what: "a lot in a mix is recorded with the whole amount",
    file: "src/taskpane/batch/record.ts",
    line: "amount: held(whole.times(percent).div(hundred)),",
    broken: "amount: held(whole.times(hundred).div(hundred)),",
    by: "tests/taskpane/batch",
  },
];
