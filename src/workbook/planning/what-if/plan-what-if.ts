/** A what-if table as a plan: the exact cells, what is there now, and one undo step that writes it. */
import { areaName } from "../../../sheet/cell-name";
import { type Block, type Cells, fault, type Host, isFault, type Step } from "../../../sheet/port";
import type { Doses } from "../../what-if/doses";
import { layout, type Layout } from "../../what-if/layout";
import { tableName } from "../../what-if/names";
import type { WhatIfQuestion } from "../../what-if/question";
import { address } from "../../../sheet/address";
import { read } from "../read";
import { carryOut } from "../carry-out";
import { finished } from "../finished";
import type { Confirmed, Plan, PlannedCell, RecordOutcome, Refusal, Remark } from "../plan";
import { freeSheetName } from "../plan-table";
import { planOneFormula } from "./plan-one-formula";
import { refused } from "../../../sheet/refusal";
import { refusal } from "../refusal";
import type { Pause } from "../settle";
import { plannedCells, tableSteps } from "./what-if-cells";
import { filledIn, planChart } from "./what-if-chart";
import { type Around, readAround, readPlace, type WhatIfPlace } from "./what-if-place";
import { whatIfWords } from "./what-if-wording";

export interface WhatIfAsked {
  readonly question: WhatIfQuestion;
  readonly doses: Doses;
  readonly place: WhatIfPlace;
  /** A table of formulas, or one formula that spills. */
  readonly form: "table" | "one-formula";
}

const sheetName = "What if";
/** More cells than this are not confirmed one by one: another place is better. */
const mostConfirmed = 12;

/** Where the table goes; a block of no size yet. */
function placed(around: Around, place: WhatIfPlace): { at: Block; isNew: boolean } {
  const sheet = place.kind === "cell" ? place.sheet : freeSheetName(around, sheetName);
  const { row, column } = place.kind === "cell" ? place : { row: 0, column: 0 };
  return { at: { sheet, row, column, rows: 1, columns: 1 }, isNew: place.kind === "new-sheet" };
}

const overwritten = (cells: readonly PlannedCell[]): Remark[] =>
  cells
    .filter(({ mustConfirm }) => mustConfirm)
    .map(({ address: place, now }) => ({
      sentence: whatIfWords.holdsSomething(place, now),
      confirm: place,
    }));

/** On a sheet of its own: columns wide enough for what stands in them. */
const widths = (sheet: string, columns: number): Step[] =>
  Array.from({ length: columns }, (_, column) => ({
    do: "set-width",
    sheet,
    column,
    characters: column === 0 ? 20 : 12,
  }));

/** Columns over which the sentences above the table run. */
const columnsOfWords = 10;

/** What goes on paper: the table, the chart below it, and the words above as far as they run. */
function onPaper(at: Block, steps: readonly Step[]): Step {
  const ends = steps.flatMap((step) =>
    step.do === "add-chart" ? [step.place.row + step.place.rows - at.row] : [],
  );
  const rows = Math.max(at.rows, ...ends);
  const block = { ...at, rows, columns: Math.max(at.columns, columnsOfWords) };
  return { do: "print-area", block, landscape: true };
}

interface Drawn {
  readonly steps: readonly Step[];
  readonly remarks: readonly Remark[];
  readonly makes: readonly string[];
}

const know = (sentence: string): Remark => ({ sentence });

async function drawn(
  host: Host,
  around: Around,
  asking: WhatIfAsked,
  table: Layout,
  at: Block,
  isNew: boolean,
): Promise<Drawn> {
  const none: Drawn = { steps: [], remarks: [], makes: [] };
  if (!around.hasCharts) return { ...none, remarks: [know(whatIfWords.noCharts(around.program))] };
  const { chart, left } = planChart(at, asking.question, asking.doses, table);
  if (!chart) return { ...none, remarks: [know(whatIfWords.noLines)] };
  const found = isNew ? undefined : await read(host, [{ ask: "cells", block: chart.place }]);
  const covered = found === undefined || isFault(found) ? [] : filledIn(found[0]);
  const count = chart.lines.length;
  return {
    steps: [{ do: "add-chart", ...chart }],
    remarks: [
      ...(left.length > 0 ? [know(whatIfWords.someLines(left))] : []),
      ...(covered.length > 0 ? [know(whatIfWords.covers(covered))] : []),
    ],
    makes: [
      `A chart of ${count === 1 ? "one line" : `${String(count)} lines`} over ${areaName(chart.place)}. It follows the cells; only the names of its lines do not.`,
    ],
  };
}

async function planTable(host: Host, around: Around, asking: WhatIfAsked): Promise<Plan | Refusal> {
  const { question, doses, place } = asking;
  const { at: corner, isNew } = placed(around, place);
  const table = layout(question, doses, corner);
  const at: Block = { ...corner, rows: table.rows.length, columns: table.rows[0]?.length ?? 0 };
  let there: Cells | undefined;
  if (!isNew) {
    const found = await readPlace(host, around, at);
    if (found.kind === "refused") return found;
    there = found;
  }
  const cells = plannedCells(at, table.rows, there);
  const full = cells.filter(({ mustConfirm }) => mustConfirm).map((cell) => cell.address);
  if (full.length > mostConfirmed) {
    return refused(whatIfWords.tooFull(full));
  }
  const chart = await drawn(host, around, asking, table, at, isNew);
  const where = `${areaName(at)} of the sheet ${at.sheet}`;
  const formulas = cells.filter(({ content }) => content.kind === "formula").length;
  return finished({
    what: "write the what-if table",
    where,
    summary: `${isNew ? `A new sheet ${at.sheet}, ${areaName(at)}` : address(at)}: ${tableName(question)}, ${String(formulas)} live formulas${chart.steps.length > 0 ? ", and a chart below it" : ""}.`,
    cells,
    makes: [
      ...(isNew
        ? [`The sheet ${at.sheet}, with widths of its columns, to be printed on one page.`]
        : []),
      ...chart.makes,
    ],
    remarks: [...overwritten(cells), ...chart.remarks],
    block: at,
    table: "",
    steps: [
      ...(isNew ? [{ do: "add-sheet", name: at.sheet } as const] : []),
      ...tableSteps(at, table),
      ...(isNew ? widths(at.sheet, at.columns) : []),
      ...chart.steps,
      ...(isNew ? [onPaper(at, chart.steps)] : []),
      { do: "select", block: at },
    ],
  });
}

/** Reads, never writes. */
export async function planWhatIf(host: Host, asking: WhatIfAsked): Promise<Plan | Refusal> {
  const around = await readAround(host);
  if (isFault(around)) return refusal(around);
  if (asking.place.kind === "new-sheet" && around.sheets.isProtected) {
    return refusal(fault("workbook-protected"));
  }
  return asking.form === "table"
    ? planTable(host, around, asking)
    : planOneFormula(host, around, asking.question, placed(around, asking.place));
}

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const writeWhatIf = (
  host: Host,
  asking: WhatIfAsked,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(host, "Write a what-if table", () => planWhatIf(host, asking), confirmed, pause);
