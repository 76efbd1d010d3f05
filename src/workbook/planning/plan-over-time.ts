/** The plan of a sheet with the figures over time: written as one undo step and read back. */
import type { Area } from "../../sheet/area";
import { type Block, type Chart, fault, type Host, isFault, type Step } from "../../sheet/port";
import { counted } from "../../sheet/counted";
import { cellAt } from "../../sheet/address";
import type { BookCell } from "../../sheet/book";
import { overTimeSheet, type OverTimeSheet, type Section } from "../over-time/sheet";
import type { Series } from "../over-time/series";
import { titrations } from "../tables/titrations";
import { asked } from "./asked";
import { carryOut } from "./carry-out";
import { finished } from "./finished";
import { readLogbook } from "./logbook/read-logbook";
import type { Confirmed, Plan, PlannedCell, RecordOutcome, Refusal } from "./plan";
import { freeSheetName } from "./plan-table";
import { plannedCell } from "./planned-cell";
import { refusal } from "./refusal";
import { whatIfWords } from "./what-if/what-if-wording";
import type { Pause } from "./settle";
import { contentOf, plainSheetSteps, type PlainSheet, wholeBlock } from "./sheet-steps";

export interface OverTimeAsked {
  /** Those that can be drawn. */
  readonly series: readonly Series[];
  /** As a spreadsheet counts days. */
  readonly today: number;
}

const wantedName = "Over time";

const isFilled = (cell: BookCell | null | undefined): cell is BookCell =>
  cell !== null && cell !== undefined && (cell.value !== undefined || cell.formula !== undefined);

const plannedCells = (name: string, { rows }: OverTimeSheet): PlannedCell[] =>
  rows.flatMap((row, at) =>
    row.flatMap((cell, column) => {
      if (!isFilled(cell) || cell.value === "") return [];
      const block = cellAt(name, at, column);
      const heading = column === 0 ? "Day" : "Figure";
      return [plannedCell({ block, heading, content: contentOf(cell), format: cell.format })];
    }),
  );

const on = (sheet: string, area: Area): Block => ({ sheet, ...area });

function chartOf(sheet: string, { series, column, chart }: Section): Chart {
  const { title, what, unit, lines, across } = series;
  return {
    sheet,
    kind: "lines",
    title,
    acrossTitle: across === "days" ? "Day" : "Batch",
    upTitle: `${what}, ${unit}`,
    across: on(sheet, column(across === "days" ? 0 : 1)),
    lines: [
      { name: what, values: on(sheet, column(2)) },
      ...lines.map(({ name }, place) => ({ name, values: on(sheet, column(3 + place)) })),
    ],
    place: on(sheet, chart),
  };
}

function stepsOf(sheet: OverTimeSheet & PlainSheet, block: Block, hasCharts: boolean): Step[] {
  return [
    ...plainSheetSteps(sheet),
    ...(hasCharts
      ? sheet.sections.map((section): Step => ({
          do: "add-chart",
          ...chartOf(block.sheet, section),
        }))
      : []),
    { do: "print-area", block, landscape: true },
    { do: "select", block: cellAt(block.sheet, 0, 0) },
  ];
}

/** What making the sheet would do. Reads, never writes. */
export async function planOverTime(
  host: Host,
  { series, today }: OverTimeAsked,
): Promise<Plan | Refusal> {
  const can = await asked(() => host.capabilities());
  if (isFault(can)) return refusal(can);
  const snapshot = await readLogbook(host, titrations.name);
  if (isFault(snapshot)) return refusal(snapshot);
  if (snapshot.sheets.isProtected) return refusal(fault("workbook-protected"));
  const name = freeSheetName(snapshot, wantedName);
  const sheet = { name, ...overTimeSheet(series, today, can.hasCharts) };
  const block = wholeBlock(sheet);
  const charts = counted(series.length, "chart");
  return finished({
    what: "make the sheet",
    where: `the sheet ${name}`,
    summary: `A new sheet ${name}: the figures as they stand today${can.hasCharts ? `, with ${charts}` : ""}. It does not follow your tables: make another when there is more.`,
    cells: plannedCells(name, sheet),
    makes: [
      `The sheet ${name}, with widths of its columns, to be printed.`,
      ...(can.hasCharts ? [`${charts}, each below its figures.`] : []),
      "Beside control charts and titrants, CONTROL or STRENGTHON of the same cells, live.",
    ],
    remarks: can.hasCharts ? [] : [{ sentence: whatIfWords.noCharts(can.program) }],
    block,
    table: "",
    steps: stepsOf(sheet, block, can.hasCharts),
  });
}

/** Plans anew and writes only what was agreed to. */
export const writeOverTime = (
  host: Host,
  wanted: OverTimeAsked,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(host, "Make the sheet Over time", () => planOverTime(host, wanted), confirmed, pause);
