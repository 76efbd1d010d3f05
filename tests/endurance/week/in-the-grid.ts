/** What the grid does with rows: it sorts them, and hides what a filter does not let through; then it is saved. */
import assert from "node:assert/strict";
import { isRefused } from "../../../src/sheet/refusal";
import { doFilter, filterBlock } from "../../../src/workbench/filtering/do-filter";
import { doSort } from "../../../src/workbench/sorting/do-sort";
import { planSort } from "../../../src/workbench/sorting/plan-sort";
import { type FileInGrid, inGrid, opened } from "../../workbench/file";
import type { WeekWorld } from "./world";

async function savedAfter(world: WeekWorld, act: (file: FileInGrid) => void): Promise<void> {
  let saved = world.workbook.file.bytes;
  await inGrid(saved, async (file) => {
    act(file);
    await file.grid.computed();
    saved = await file.saved();
  });
  world.workbook = opened(saved);
}

/** By the titre: rows not begun stay at the end. The model puts each row in by hand, one after the other. */
export async function sort(world: WeekWorld): Promise<void> {
  const { model, chance } = world;
  const isDown = chance.is(0.5);
  const place = { sheet: model.sheet, row: model.top + 1, column: world.titre };
  await savedAfter(world, ({ grid, holding }) => {
    const terms = { cells: grid.cells, holding, fixed: undefined };
    const plan = planSort(terms, place, isDown ? "down" : "up");
    assert.ok(!isRefused(plan), isRefused(plan) ? plan.sentence : "");
    doSort(grid.injector, grid.cells, plan);
  });
  const filled = model.lines.filter(({ lot }) => lot !== undefined);
  const waiting = model.lines.length - filled.length;
  model.lines.length = 0;
  for (const line of filled) {
    const later = model.lines.findIndex(({ titre = 0 }) =>
      isDown ? titre < (line.titre ?? 0) : titre > (line.titre ?? 0),
    );
    model.lines.splice(later < 0 ? model.lines.length : later, 0, line);
  }
  for (let each = 0; each < waiting; each += 1) {
    model.lines.push({ lot: undefined, titre: undefined });
  }
}

/** Rows of small titres are hidden, saved, seen to be hidden in the file, and shown again. */
export async function filterAndShow(world: WeekWorld): Promise<void> {
  const { model, chance } = world;
  const atLeast = chance.whole(1, 8);
  const column = world.titre;
  const ask = (file: FileInGrid, isAsked: boolean): void => {
    const block = filterBlock(file.grid.cells, { sheet: model.sheet, row: model.top + 1, column });
    assert.ok(!isRefused(block), isRefused(block) ? block.sentence : "");
    const criterion = isAsked ? ({ kind: "figures", atLeast } as const) : undefined;
    doFilter(file.grid.injector, file.grid.cells, block, column, criterion);
  };
  await savedAfter(world, (file) => {
    ask(file, true);
  });
  const hidden = model.lines.flatMap(({ titre }, at) =>
    titre !== undefined && titre >= atLeast ? [] : [model.top + 1 + at],
  );
  assert.deepEqual(
    [...world.sheet.hiddenRows].sort((a, b) => a - b),
    hidden,
  );
  await savedAfter(world, (file) => {
    ask(file, false);
  });
  assert.deepEqual(world.sheet.hiddenRows, []);
}
