/** What a re-check found, on a new sheet: what each cell holds and should hold, as live formulas. */
import { areaName } from "../../../sheet/cell-name";
import {
  type Block,
  type Content,
  type Host,
  fault,
  isFault,
  type Sheets,
  type Step,
} from "../../../sheet/port";
import { counted } from "../../../sheet/counted";
import type { RecheckReport } from "../../../adopt/recheck/reporting/finding";
import { aboveLimitWords } from "../../../adopt/recheck/reporting/above-limit";
import { methanolWords, oddMethanolWords } from "../../../adopt/recheck/reporting/methanol-seen";
import { ofTheBook } from "../../../adopt/recheck/reporting/caution";
import { andList } from "../../../sheet/and-list";
import { mistakesIn } from "../../../adopt/recheck/reporting/cause-words";
import { mistakeOf } from "../../../adopt/recheck/mistakes/all";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { uncheckedWords } from "../../../adopt/recheck/reporting/unchecked";
import { cellAt } from "../../../sheet/address";
import { finished } from "../finished";
import type { Plan, PlannedCell, Refusal } from "../plan";
import { plannedCell } from "../planned-cell";
import { read } from "../read";
import { isFrom, lineOf, sourceOf } from "./recheck-lines";
import { refusal } from "../refusal";
import { widthSteps } from "../sheet-steps";

const reportName = "Re-check report";
const headingRow = 3;
const headings = [
  "Cell",
  "Row",
  "Lot or batch",
  "Column",
  "Unit",
  "Holds",
  "Should hold",
  "Off by",
  "Mistake",
  "Lye off, g",
  "Acid left, mol",
  "Acid left, %",
] as const;
const widths = [10, 7, 16, 18, 9, 11, 12, 11, 54, 11, 13, 12];

function freeName({ sheets }: Sheets): string {
  const isTaken = (name: string): boolean =>
    sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  let name = reportName;
  for (let number = 2; isTaken(name); number += 1) name = `${reportName} ${String(number)}`;
  return name;
}

const value = (of: string): Content => ({ kind: "value", value: of });

const filled = (content: readonly Content[]): Content[] =>
  Array.from({ length: headings.length }, (_, at) => content[at] ?? { kind: "keep" });

function contentsOf(report: RecheckReport, logbooks: readonly Logbook[]): Content[][] {
  const { findings } = report;
  const first = headingRow + 1;
  const sources = logbooks.map((each) => sourceOf(each));
  const kinds = [...new Set(findings.flatMap(mistakesIn))];
  return [
    filled([{ kind: "value", value: "What a re-check of the logbook found", style: "title" }]),
    filled([
      value(
        `Checked: ${counted(report.rows, "row")}, ${counted(report.figures, "figure")}. Not what they should be: ${counted(findings.length, "figure")}. Holds, Should hold and Off by follow the logbook.`,
      ),
    ]),
    filled([]),
    headings.map((each): Content => ({ kind: "value", value: each, style: "heading" })),
    ...findings.map((finding, at) =>
      lineOf(
        finding,
        first + at,
        sources.find((each) => isFrom(finding, each)),
      ),
    ),
    ...(report.noDose === "" ? [] : [filled([value(`No dose was checked: ${report.noDose}.`)])]),
    ...(report.taken.length === 0
      ? []
      : [filled([value(`Assumed for this check: ${andList(report.taken)}.`)])]),
    ...report.aboveLimit.map((each) => filled([value(aboveLimitWords(each))])),
    ...report.methanol
      .flatMap((each) => [...oddMethanolWords(each), methanolWords(each)])
      .map((words) => filled([value(words)])),
    ...report.unchecked.map((each) => filled([value(uncheckedWords(each))])),
    filled([]),
    ...kinds.map((kind) => filled([value(`${mistakeOf(kind).name}: ${mistakeOf(kind).sentence}`)])),
    filled([
      value(
        "Lye off: of the row, said in each of its lines; below 0 is too little. Acid left: what found no lye, at the dose the row holds. The figures tell which batches to look at again. " +
          ofTheBook,
      ),
    ]),
  ];
}

/** Reads which sheets there are; writes nothing. */
export async function planReport(
  host: Host,
  report: RecheckReport,
  logbooks: readonly Logbook[],
): Promise<Plan | Refusal> {
  const found = await read(host, [{ ask: "sheets" }]);
  if (isFault(found)) return refusal(found);
  const [sheets] = found;
  if (sheets.isProtected) return refusal(fault("workbook-protected"));
  const sheet = freeName(sheets);
  const contents = contentsOf(report, logbooks);
  const block: Block = {
    sheet,
    row: 0,
    column: 0,
    rows: contents.length,
    columns: headings.length,
  };
  const cells = contents.flatMap((row, at) =>
    row.flatMap((content, column): PlannedCell[] => {
      if (content.kind === "keep" || (content.kind === "value" && content.value === "")) return [];
      const cell = cellAt(sheet, at, column);
      return [plannedCell({ block: cell, heading: headings[column] ?? "", content })];
    }),
  );
  const steps: Step[] = [
    { do: "add-sheet", name: sheet },
    { do: "set-cells", block, contents },
    ...widthSteps(sheet, widths),
    { do: "freeze-rows", sheet, rows: headingRow + 1 },
    { do: "select", block: cellAt(sheet, headingRow, 0) },
  ];
  return finished({
    what: "write the report",
    where: `${areaName(block)} of the sheet ${sheet}`,
    summary: `A new sheet ${sheet}: ${counted(report.findings.length, "line")}, one for each figure that is not what it should be.`,
    cells,
    makes: [`The sheet ${sheet}, with a title and the headings in row ${String(headingRow + 1)}.`],
    remarks: [],
    block,
    table: "",
    steps,
  });
}
