/** What is done in a week in a logbook's file: recorded, put in, taken out, sorted, renamed, saved. */
import assert from "node:assert/strict";
import {
  type Content,
  type Edit,
  isFileProblem,
  openXlsx,
  restructured,
  sayFile,
  type StructuralAct,
} from "../../../src/xlsx";
import { filterAndShow, sort } from "./in-the-grid";
import type { Line } from "./model";
import { notes, type WeekWorld } from "./world";

function change(world: WeekWorld, act: StructuralAct): void {
  const made = restructured(world.workbook, act);
  if (isFileProblem(made)) throw new Error(`${act.do}: ${sayFile(made)}`);
  world.workbook = made;
}

function written(world: WeekWorld, at: number, line: Line): void {
  const { model } = world;
  const row = model.top + 1 + at;
  const set = (column: number, value: string | number | undefined): Edit => ({
    do: "set-cell",
    sheet: model.sheet,
    row,
    column,
    content: value === undefined ? { kind: "nothing" } : { kind: "value", value },
  });
  // what the row's formulas came to before, they do not come to now
  const anew = world.table.columns.flatMap(({ formula }, column): Edit[] => {
    if (formula === undefined) return [];
    const content = { kind: "formula", formula, result: undefined } as const;
    return [{ do: "set-cell", sheet: model.sheet, row, column, content }];
  });
  world.patch([set(world.lot, line.lot), set(world.titre, line.titre), ...anew]);
  model.lines[at] = line;
}

const line = (world: WeekWorld): Line => ({
  lot: world.fresh(),
  titre: world.chance.whole(5, 900) / 100,
});

/** Into the first row that is not begun, or below the last. */
function record(world: WeekWorld): void {
  const { model } = world;
  const free = model.lines.findIndex(({ lot }) => lot === undefined);
  if (free >= 0) {
    written(world, free, line(world));
    return;
  }
  const next = line(world);
  const cells = world.table.columns.map(({ formula }, column): Content => {
    if (formula !== undefined) return { kind: "formula", formula, result: undefined };
    const value = column === world.lot ? next.lot : column === world.titre ? next.titre : undefined;
    return value === undefined ? { kind: "nothing" } : { kind: "value", value };
  });
  world.patch([{ do: "add-rows", table: "Titrations", rows: [cells] }]);
  model.lines.push(next);
}

function editALine(world: WeekWorld): void {
  const at = world.chance.whole(0, world.model.lines.length - 1);
  const now = world.model.lines[at];
  if (now?.lot !== undefined)
    written(world, at, { ...now, titre: world.chance.whole(5, 900) / 100 });
}

function pointAtARow(world: WeekWorld): void {
  const { model, chance } = world;
  if (model.notes.length >= 12) return;
  const row = model.top + 1 + chance.whole(0, model.lines.length - 1);
  model.notes.push({ from: row, to: row });
  world.setNote(model.notes.length, world.noteFormula({ from: row, to: row }));
}

function sumAnew(world: WeekWorld): void {
  const { model, chance } = world;
  const first = model.top + 1;
  const [a, b] = [0, 0].map(() => first + chance.whole(0, model.lines.length - 1)) as [
    number,
    number,
  ];
  model.sum = { from: Math.min(a, b), to: Math.max(a, b) };
  world.setNote(0, world.sumFormula());
}

function insertRows(world: WeekWorld): void {
  const { model, chance } = world;
  const count = chance.whole(1, 3);
  // within the table, or above it, below its title
  const within = model.top + 2 + chance.whole(0, Math.max(0, model.lines.length - 2));
  const before = chance.is(0.2) || model.lines.length < 2 ? 2 : within;
  change(world, { do: "insert-rows", sheet: model.sheet, before, count });
  model.insert(before, count);
}

function deleteRows(world: WeekWorld): void {
  const { model, chance } = world;
  if (model.above > 0 && chance.is(0.4)) {
    change(world, { do: "delete-rows", sheet: model.sheet, first: 2, count: 1 });
    model.delete(2, 1);
    return;
  }
  if (model.lines.length < 2) return;
  const at = chance.whole(0, model.lines.length - 1);
  const count = Math.min(chance.whole(1, 3), model.lines.length - at, model.lines.length - 1);
  const first = model.top + 1 + at;
  change(world, { do: "delete-rows", sheet: model.sheet, first, count });
  model.delete(first, count);
}

/** A table must keep a row: what would take all of them is refused, and nothing is changed. */
function deleteAllRows(world: WeekWorld): void {
  const { model } = world;
  const act: StructuralAct = {
    do: "delete-rows",
    sheet: model.sheet,
    first: model.top + 1,
    count: model.lines.length,
  };
  const made = restructured(world.workbook, act);
  assert.ok(isFileProblem(made), "all rows of a table were deleted");
}

function columnsOfNotes(world: WeekWorld): void {
  const { model, chance } = world;
  if (model.before > 0 && chance.is(0.5)) {
    change(world, { do: "delete-columns", sheet: notes, first: 0, count: 1 });
    model.before -= 1;
    return;
  }
  if (model.before > 30) return;
  const count = chance.whole(1, 2);
  change(world, { do: "insert-columns", sheet: notes, before: 0, count });
  model.before += count;
}

const names = [
  "Titrations",
  "Öl & Lauge",
  "2026",
  "Kai's (3)",
  "R1C1",
  "a-b",
  "Titres <raw>",
  "TRUE",
];

function rename(world: WeekWorld): void {
  const { model, chance } = world;
  const name = chance.of(names.filter((each) => !model.sheets.includes(each)));
  change(world, { do: "rename-sheet", sheet: model.sheet, name });
  model.sheets[model.sheets.indexOf(model.sheet)] = name;
  model.sheet = name;
}

function move(world: WeekWorld): void {
  const { model, chance } = world;
  const from = chance.whole(0, model.sheets.length - 1);
  const to = chance.whole(0, model.sheets.length - 1);
  change(world, { do: "move-sheet", sheet: model.sheets[from] as string, to });
  const [moved] = model.sheets.splice(from, 1);
  model.sheets.splice(to, 0, moved as string);
}

/** What was held after each act, reading what changed alone, is what the whole file says. */
function saveAndOpen(world: WeekWorld): void {
  const held = world.workbook;
  const opened = openXlsx(held.file.bytes);
  if (isFileProblem(opened)) throw new Error(sayFile(opened));
  assert.deepEqual({ ...held, file: "" }, { ...opened, file: "" });
  world.workbook = opened;
}

export type WeekAct = (world: WeekWorld) => void | Promise<void>;

export const weekActs: readonly (readonly [weight: number, act: readonly [string, WeekAct]])[] = [
  [8, ["record", record]],
  [4, ["edit a line", editALine]],
  [2, ["point at a row", pointAtARow]],
  [2, ["sum anew", sumAnew]],
  [5, ["insert rows", insertRows]],
  [5, ["delete rows", deleteRows]],
  [0.3, ["delete all rows", deleteAllRows]],
  [1.5, ["columns of the notes", columnsOfNotes]],
  [1.5, ["rename", rename]],
  [1.5, ["move", move]],
  [1, ["save and open", saveAndOpen]],
  [0.5, ["sort", sort]],
  [0.3, ["filter and show", filterAndShow]],
];
