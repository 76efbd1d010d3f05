/** Acts in the workbook itself: somebody types, takes it back, does it again, opens another. */
import type { Block, Content } from "../../../src/sheet/port";
import type { Book } from "../../../src/sheet/book";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { logbookOf } from "../../workbook/planning/logbooks";
import type { World } from "../world";

const one = (sheet: string, row: number, column: number): Block => ({
  sheet,
  row,
  column,
  rows: 1,
  columns: 1,
});

/** Also where the next row will go: nobody keeps away from there. */
const somewhere = ({ chance, workbook }: World): Block => {
  const table = workbook.tableBlock("Titrations");
  if (table && chance.is(0.2)) {
    const column = table.column + chance.whole(0, table.columns - 1);
    return one(table.sheet, table.row + table.rows, column);
  }
  const sheet = chance.of(workbook.sheetNames());
  return one(sheet, chance.whole(0, 14), chance.whole(0, chance.is(0.5) ? 6 : 45));
};

const typed = ({ chance }: World): Content => {
  if (chance.is(0.1))
    return { kind: "formula", formula: chance.of(["=1+1", "=A1&B1", "=SUM(A1:B2)"]) };
  const value = chance.weighted<string | number | boolean>([
    [5, chance.whole(1, 900) / 100],
    [2, ""],
    [1, chance.of(["lots", "007", "=1+1", "neutralised", "2,40"])],
    [1, chance.of([0, -1, 1e12, true])],
  ]);
  return { kind: "value", value };
};

/** A table's heading: a program takes any text there, and nothing else. */
const isHeading = ({ workbook }: World, { sheet, row, column }: Block): boolean =>
  workbook.peek(({ tables }) =>
    tables.some(
      ({ block }) =>
        block.sheet === sheet &&
        block.row === row &&
        column >= block.column &&
        column < block.column + block.columns,
    ),
  );

/** A formula or heading of ours under it? Then results there are nobody's to foretell. */
function isOfOurs({ workbook }: World, { sheet, row, column }: Block): boolean {
  const held = workbook.present[`${sheet}!${String(row)},${String(column)}`] ?? "";
  const isFormula = held !== "" && (JSON.parse(held) as [unknown, string])[1] !== "";
  return ["Titrations", "Batches", "Blends", "Lots", "Titrants"].some((name) => {
    const block = workbook.tableBlock(name);
    if (block?.sheet !== sheet || column >= block.column + block.columns) return false;
    const isBody = row > block.row && row < block.row + block.rows;
    return row === block.row || (isBody && isFormula);
  });
}

/** @param near a block that somebody is about to write: they may meet there */
export async function typeSomewhere(world: World, near?: Block): Promise<void> {
  const { chance, workbook } = world;
  const isThere = near !== undefined && workbook.sheetNames().includes(near.sheet);
  let block = somewhere(world);
  if (isThere && chance.is(0.7)) {
    const row = near.row + chance.whole(0, near.rows - 1);
    block = one(near.sheet, row, near.column + chance.whole(0, near.columns - 1));
  }
  let content = typed(world);
  if (isOfOurs(world, block)) {
    if (chance.is(0.9)) return;
    workbook.isSpoilt = true;
  }
  // a formula of somebody's among the readings would count as a reading
  if (content.kind === "formula") content = chance.is(0.5) ? content : { kind: "value", value: 1 };
  if (isHeading(world, block)) content = { kind: "value", value: `Ferry ${String(block.column)}` };
  await workbook.type(block, content);
}

const foreign = () =>
  logbookOf({
    headings: ["Date", "Lot", "Titre 1 mL", "Blank 1 mL", "Mass g", "Molarity mol/L", "Ferry"],
    rows: [
      [46_290, "F-201", 2.4, 0.1, 10, 0.1, "Heron"],
      [46_291, "F-202", 3.1, 0.1, 10, 0.1, "Gannet"],
      [46_292, "F-203", 2.9, 0.15, 10, 0.1, "Heron"],
    ],
    below: ["Counted by the mate"],
    name: "Log",
  });

export function openAnother({ chance, workbook }: World): void {
  workbook.open(
    chance.weighted<() => Book | undefined>([
      [4, () => undefined],
      [2, foreign],
      [1, sampleLogbook],
    ])(),
  );
}

export const undo = ({ workbook }: World): void => {
  workbook.undo();
};
export const redo = ({ workbook }: World): void => {
  workbook.redo();
};
