/** The plan of a row in a table that is there: what goes where, and what stands in the way. */
import { type Block, fault, type Step } from "../../../sheet/port";
import { tokensOf } from "../../../sheet/formula/token";
import type { RowValue } from "../../record/row-values";
import { looksUpItsRow, workingsName } from "../../../partner/sharing/workings/workings-name";
import { finished } from "../finished";
import { placeOf } from "../headings";
import type { Plan, Refusal, Remark } from "../plan";
import { recordedBefore } from "./recorded-before";
import { rowWords, type RecordTarget } from "./record-target";
import { refusal } from "../refusal";
import { remarkWords } from "../remark-wording";
import { rowCells } from "./row-cells";
import type { Logbook, Snapshot } from "../snapshot";
import { targetRow } from "./target-row";

const refused = (code: Refusal["code"], sentence: string): Refusal => ({
  kind: "refused",
  code,
  sentence,
});

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
function hindrance(
  { sheets }: Snapshot,
  logbook: Logbook,
  { essential, shape, what }: RecordTarget,
): Refusal | undefined {
  const { table } = logbook;
  const { name, block, headings, isFiltered } = table;
  const missing = missingFrom(headings, essential);
  if (missing.length > 0) {
    return refused("name-taken", remarkWords.notOurTable(name, block.sheet, shape, missing));
  }
  const found = sheets.sheets.find((sheet) => sheet.name === block.sheet);
  if (found?.isProtected) {
    return refusal(fault("sheet-protected", block.sheet));
  }
  if (isPartnerCopy(logbook)) {
    return refused("name-taken", remarkWords.partnerCopy(table.name, what));
  }
  return isFiltered ? refusal(fault("table-filtered", name)) : undefined;
}

function aboutColumns(
  { table }: Logbook,
  { shape }: RecordTarget,
  values: readonly RowValue[],
): Remark[] {
  const { name, headings } = table;
  const lost = missingFrom(
    headings,
    values.map(({ heading }) => heading),
  );
  const results = missingFrom(
    headings,
    shape.columns.filter(({ formula }) => formula).map(({ heading }) => heading),
  );
  const code = "column-missing";
  return [
    ...(lost.length > 0
      ? [{ code, sentence: remarkWords.columnsMissing(name, lost), confirm: code } as const]
      : []),
    ...(results.length > 0
      ? [{ code, sentence: remarkWords.resultsMissing(name, results) } as const]
      : []),
  ];
}

function aboutRepeat(
  logbook: Logbook,
  target: RecordTarget,
  values: readonly RowValue[],
): Remark[] {
  const row = recordedBefore(logbook, target, values);
  if (row === undefined) return [];
  const code = "recorded-before";
  return [{ code, sentence: remarkWords.recordedBefore(row, target), confirm: code }];
}

export function planRow(
  snapshot: Snapshot,
  logbook: Logbook,
  into: RecordTarget,
  values: readonly RowValue[],
): Plan | Refusal {
  const stopped = hindrance(snapshot, logbook, into);
  if (stopped) return stopped;
  const { table } = logbook;
  const target = targetRow(logbook);
  if (target.isNew && table.hasTotals) {
    return refused("target-not-empty", remarkWords.totals(table.name));
  }
  const { contents, cells, remarks } = rowCells(logbook, into.shape, target, values);
  const row: Block = { ...table.block, row: table.block.row + target.row, rows: 1 };
  const grown: Block = { ...table.block, rows: table.block.rows + 1 };
  const steps: Step[] = [
    ...(target.isNew ? [{ do: "grow-table", name: table.name, block: grown } as const] : []),
    { do: "set-cells", block: row, contents: [contents] },
    { do: "select", block: row },
  ];
  const which = `${target.isNew ? "A new row" : "The empty row"} ${String(row.row + 1)}`;
  return finished({
    ...rowWords(into, row),
    summary: `${which} in the table ${table.name} on the sheet ${table.block.sheet}.`,
    cells,
    makes: [],
    remarks: [
      ...aboutRepeat(logbook, into, values),
      ...aboutColumns(logbook, into, values),
      ...remarks,
    ],
    block: row,
    table: into.shape.name,
    steps,
  });
}
