/** The plan of a row in a table that is there: what goes where, and what stands in the way. */
import { type Block, fault, type Step } from "../../../sheet/port";
import { tokensOf } from "../../../sheet/formula/token";
import { headingsOf, type RecordTable } from "../../tables/column";
import type { RowValue } from "../../tables/row-values";
import { looksUpItsRow, workingsName } from "../../../partner/sharing/workings/workings-name";
import { finished } from "../finished";
import { formulasBack } from "../formulas-back";
import { placeOf } from "../headings";
import type { Plan, Refusal, Remark } from "../plan";
import { recordedBefore } from "./recorded-before";
import { rowWords } from "./row-words";
import { refused } from "../../../sheet/refusal";
import { refusal } from "../refusal";
import { remarkWords } from "../remark-wording";
import { rowCells } from "./row-cells";
import { type Logbook, nowText, readCell, type Snapshot } from "../snapshot";
import { type RowChoice, targetRow, type TargetRow } from "./target-row";

const missingFrom = (headings: readonly string[], wanted: readonly string[]): string[] =>
  wanted.filter((heading) => placeOf(heading, headings) === undefined);

/** Of a partner copy: its formulas have their steps on a sheet that only sharing writes. */
const isPartnerCopy = ({ cells }: Logbook): boolean =>
  cells.formulas.some((row) =>
    row.some(
      (formula) =>
        formula.includes(workingsName) && looksUpItsRow(tokensOf(formula).map(({ text }) => text)),
    ),
  );

/** Why no row can go into this table; undefined when one can. */
function hindrance({ sheets }: Snapshot, logbook: Logbook, into: RecordTable): Refusal | undefined {
  const { table } = logbook;
  const { name, block, headings, isFiltered } = table;
  const missing = missingFrom(headings, headingsOf(into, "isEssential"));
  if (missing.length > 0) {
    return refused(remarkWords.notOurTable(name, block.sheet, into, missing));
  }
  const found = sheets.sheets.find((sheet) => sheet.name === block.sheet);
  if (found?.isProtected) {
    return refusal(fault("sheet-protected", block.sheet));
  }
  if (isPartnerCopy(logbook)) {
    return refused(remarkWords.partnerCopy(table.name, into.what));
  }
  return isFiltered ? refusal(fault("table-filtered", name)) : undefined;
}

function aboutColumns(
  { table }: Logbook,
  { columns }: RecordTable,
  values: readonly RowValue[],
): Remark[] {
  const { name, headings } = table;
  const lost = missingFrom(
    headings,
    values.map(({ heading }) => heading),
  );
  const results = missingFrom(
    headings,
    columns.filter(({ formula }) => formula).map(({ heading }) => heading),
  );
  return [
    ...(lost.length > 0
      ? [
          {
            sentence: remarkWords.columnsMissing(name, lost),
            confirm: "column-missing",
            agreeing: "Record it without that",
          },
        ]
      : []),
    ...(results.length > 0 ? [{ sentence: remarkWords.resultsMissing(name, results) }] : []),
  ];
}

function aboutRepeat(logbook: Logbook, target: RecordTable, values: readonly RowValue[]): Remark[] {
  const row = recordedBefore(logbook, target, values);
  if (row === undefined) return [];
  return [
    {
      sentence: remarkWords.recordedBefore(row, target),
      confirm: "recorded-before",
      agreeing: "Record it once more",
    },
  ];
}

/** The row that is taken, or why none is. */
function chosen(logbook: Logbook, into: RecordTable, choice: RowChoice): TargetRow | Refusal {
  const { table } = logbook;
  const target = targetRow(logbook, into, choice);
  if (target?.isNew && table.hasTotals) {
    return refused(remarkWords.totals(table.name));
  }
  if (target?.inTheWay.length === 0) return target;
  const next = targetRow(logbook, into, "next free");
  if (!target || !next) return refused(remarkWords.noFreeRow(table.name));
  const held = target.inTheWay.map((column) => nowText(readCell(logbook, target.row, column)));
  const sentence = remarkWords.occupied(table.block.row + target.row + 1, held);
  const hasNext = !(next.isNew && table.hasTotals);
  return { ...refused(sentence), ...(hasNext ? { hasNextFree: true } : {}) };
}

function summaryOf({ table }: Logbook, target: TargetRow): string {
  const end = table.block.row + table.block.rows;
  const row = table.block.row + target.row;
  const which = `${target.isNew ? "A new row" : "The empty row"} ${String(row + 1)}`;
  const place = `${which} in the table ${table.name} on the sheet ${table.block.sheet}`;
  if (!target.isNew || row === end) return `${place}.`;
  const between =
    row - end === 1 ? `Row ${String(row)}` : `Rows ${String(end + 1)} to ${String(row)}`;
  return `${place}. ${between}, below it so far, ${row - end === 1 ? "becomes" : "become"} part of it.`;
}

export function planRow(
  snapshot: Snapshot,
  logbook: Logbook,
  into: RecordTable,
  values: readonly RowValue[],
  choice: RowChoice = "first",
): Plan | Refusal {
  const stopped = hindrance(snapshot, logbook, into);
  if (stopped) return stopped;
  const { table } = logbook;
  const target = chosen(logbook, into, choice);
  if ("kind" in target) return target;
  const { contents, cells, remarks } = rowCells(logbook, into, target, values);
  const back = formulasBack(logbook, into, target);
  const row: Block = { ...table.block, row: table.block.row + target.row, rows: 1 };
  const grown: Block = { ...table.block, rows: target.row + 1 };
  const steps: Step[] = [
    ...(target.isNew ? [{ do: "grow-table", name: table.name, block: grown } as const] : []),
    { do: "set-cells", block: row, contents: [contents] },
    ...back.steps,
    { do: "select", block: row },
  ];
  return finished({
    ...rowWords(into, row),
    summary: summaryOf(logbook, target),
    cells: [...cells, ...back.cells],
    makes: [],
    remarks: [
      ...aboutRepeat(logbook, into, values),
      ...aboutColumns(logbook, into, values),
      ...remarks,
      ...(back.cells.length > 0
        ? [
            {
              sentence: remarkWords.formulasBack(back.cells.length),
            } as const,
          ]
        : []),
    ],
    block: row,
    ...(back.cells.length > 0
      ? { covers: { ...table.block, rows: Math.max(table.block.rows, target.row + 1) } }
      : {}),
    table: into.name,
    steps,
  });
}
