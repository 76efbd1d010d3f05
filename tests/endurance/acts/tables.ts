/** What-if tables, and columns added to a logbook. */
import { readLogbooks } from "../../../src/taskpane/logbook/read-logbooks";
import { firstState, reduce, shownTable } from "../../../src/taskpane/logbook/state";
import { offers } from "../../../src/adopt/added-columns/columns-to-add";
import { planColumns } from "../../../src/workbook/planning/logbook/add-columns";
import { carryOut } from "../../../src/workbook/planning/carry-out";
import { planWhatIf, writeWhatIf } from "../../../src/workbook/planning/what-if/plan-what-if";
import { doses, question } from "../../workbook/what-if/questions";
import { catalystByHand, isNear, kilogramsByHand } from "../by-hand";
import type { World } from "../world";
import { carry } from "./carried";

export async function writeWhatIfTable(world: World): Promise<void> {
  const { chance, workbook } = world;
  const sizes = chance.of([[100], [50, 100, 200], [20, 40]]);
  const acids = chance.of([[2, 5], [1.5], [1, 3, 6]]);
  const asked = question({ sizes, unit: "l", columns: acids.map((acid) => ({ acid })) });
  const place = chance.is(0.5)
    ? ({ kind: "new-sheet" } as const)
    : ({
        kind: "cell",
        sheet: chance.of(workbook.sheetNames()),
        row: chance.whole(0, 30),
        column: chance.whole(0, 45),
      } as const);
  const asking = { question: asked, doses: doses(asked), place, form: "table" } as const;
  const { outcome } = await carry(world, {
    what: "what-if table",
    plan: () => planWhatIf(workbook.host, asking),
    write: (confirmed) => writeWhatIf(workbook.host, asking, confirmed),
  });
  if (outcome.kind !== "recorded" || !outcome.isReadBack) return;
  const { values } = await workbook.cells(outcome.plan.block);
  // sizes down, acid values across: the last rows and columns of the block
  const body = values.slice(-sizes.length).map((row) => row.slice(-acids.length));
  sizes.forEach((size, row) => {
    acids.forEach((acid, column) => {
      const wanted = catalystByHand(kilogramsByHand(size, "l"), acid, "KOH", 90, 0.765);
      const found = body[row]?.[column];
      if (!isNear(found, wanted)) {
        throw new Error(`a dose shows ${JSON.stringify(found)}, by hand ${String(wanted)}`);
      }
    });
  });
}

export async function addAColumn(world: World): Promise<void> {
  const { chance, workbook } = world;
  const { host } = workbook;
  const found = await readLogbooks(host);
  // our own tables are taken when a person says so
  const state = reduce(
    firstState,
    found.do === "found"
      ? { do: "found", tables: [...found.tables, ...(found.others ?? [])] }
      : found,
  );
  if (state.tables.length === 0) return;
  const shown = shownTable({ ...state, at: chance.whole(0, state.tables.length - 1) });
  if (!shown) return;
  const spelling = chance.of(["functions", "plain"] as const);
  const all = offers(shown.mapping, shown.cells, spelling);
  const offered = all.filter(({ formula, isThere }) => formula !== undefined && !isThere);
  if (offered.length === 0) return;
  const chosen = [chance.of(offered)];
  const { sheet, place } = shown.mapping;
  const row = chance.whole(place.headingRow, place.lastRow);
  const inTheWay = { sheet, row, column: place.lastColumn + 1, rows: 1, columns: 1 };
  const isInTheWay = chance.is(0.3);
  if (isInTheWay) await workbook.type(inTheWay, { kind: "value", value: "the mate's own" });
  const plan = () => planColumns(host, shown.mapping, chosen);
  await carry(world, {
    what: "column",
    plan,
    write: (confirmed) => carryOut(host, "Add columns to the logbook", plan, confirmed),
  });
  if (isInTheWay) workbook.undo();
}
