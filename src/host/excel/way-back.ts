/**
 * The program does what it is told until something fails, and keeps what it did till then. So before a
 * write, what it would change is read, as steps that put it back.
 */
import {
  type Cells,
  type Content,
  type Fault,
  fault,
  type Found,
  type Question,
  type Step,
} from "../../sheet/port";
import { answers } from "./answers";
import { doStep } from "./steps";

export interface WayBack {
  /** Sheets that are not there yet. */
  readonly newSheets: readonly string[];
  /** Charts that are there already, on the sheets that get one. */
  readonly charts: ReadonlyMap<string, readonly string[]>;
  readonly steps: readonly Step[];
}

type SetCells = Extract<Step, { do: "set-cells" }>;

/** The sheet a step changes; undefined when the step itself does not say. */
const sheetOf = (step: Step): string | undefined => {
  if ("block" in step) return step.block.sheet;
  return "sheet" in step ? step.sheet : undefined;
};

const wasThere = (cells: Cells, row: number, column: number): Content => {
  const value = cells.values[row]?.[column] ?? "";
  const formula = cells.formulas[row]?.[column] ?? "";
  const format = cells.formats[row]?.[column] ?? "General";
  if (formula !== "") return { kind: "formula", formula, format };
  return typeof value === "object" ? { kind: "keep" } : { kind: "value", value, format };
};

/** Cells that the step keeps are kept on the way back too. */
const cellsBack = ({ block, contents }: SetCells, cells: Cells): Step => ({
  do: "set-cells",
  block,
  contents: contents.map((row, r) =>
    row.map((content, c) => (content.kind === "keep" ? content : wasThere(cells, r, c))),
  ),
});

function questionOf(step: Step, isThere: (sheet: string) => boolean): Question | undefined {
  if (step.do === "grow-table") return { ask: "table", name: step.name };
  if (step.do !== "set-cells" || !isThere(step.block.sheet)) return undefined;
  return { ask: "cells", block: step.block };
}

function stepBack(step: Step, found: Found | undefined): Step[] {
  if (step.do === "grow-table" && found?.kind === "table") {
    return [{ do: "grow-table", name: found.name, block: found.block }];
  }
  return step.do === "set-cells" && found?.kind === "cells" ? [cellsBack(step, found)] : [];
}

/** Reads the way back; a fault where a sheet to be changed is protected. */
export async function wayBack(
  context: Excel.RequestContext,
  steps: readonly Step[],
): Promise<WayBack | Fault> {
  const [sheets] = await answers(context, [{ ask: "sheets" }]);
  const there = sheets?.kind === "sheets" ? sheets.sheets : [];
  const locked = there.find(
    ({ name, isProtected }) =>
      isProtected && steps.some((step) => step.do !== "select" && sheetOf(step) === name),
  );
  if (locked) return fault("sheet-protected", locked.name);
  const isThere = (name: string): boolean => there.some((sheet) => sheet.name === name);
  const asked = steps.flatMap((step) => {
    const question = questionOf(step, isThere);
    return question ? [{ step, question }] : [];
  });
  const found = await answers(
    context,
    asked.map(({ question }) => question),
  );
  const charted = steps.flatMap((step) =>
    step.do === "add-chart" && isThere(step.sheet) ? [step.sheet] : [],
  );
  return {
    charts: idsOf(await chartsOn(context, [...new Set(charted)])),
    newSheets: steps.flatMap((step) =>
      step.do === "add-sheet" && !isThere(step.name) ? [step.name] : [],
    ),
    steps: asked.flatMap(({ step }, index) => stepBack(step, found[index])).reverse(),
  };
}

/** The charts on each sheet, by what the program calls them: two may have one name. */
async function chartsOn(
  context: Excel.RequestContext,
  sheets: readonly string[],
): Promise<ReadonlyMap<string, readonly Excel.Chart[]>> {
  if (sheets.length === 0) return new Map();
  const found = sheets.map((name) => {
    const { charts } = context.workbook.worksheets.getItem(name);
    charts.load("items/id");
    return [name, charts] as const;
  });
  await context.sync();
  return new Map(found.map(([name, charts]) => [name, charts.items]));
}

const idsOf = (
  charts: ReadonlyMap<string, readonly Excel.Chart[]>,
): ReadonlyMap<string, readonly string[]> =>
  new Map([...charts].map(([sheet, items]) => [sheet, items.map(({ id }) => id)]));

/** In a conversation of its own: what is left of one in which something failed is not to be relied on. */
export async function goBack(context: Excel.RequestContext, way: WayBack): Promise<void> {
  for (const step of way.steps) doStep(context, step);
  const added = way.newSheets.map((name) => context.workbook.worksheets.getItemOrNullObject(name));
  await context.sync();
  for (const sheet of added) if (!sheet.isNullObject) sheet.delete();
  for (const [sheet, charts] of await chartsOn(context, [...way.charts.keys()])) {
    const before = way.charts.get(sheet) ?? [];
    for (const chart of charts) if (!before.includes(chart.id)) chart.delete();
  }
  await context.sync();
}
