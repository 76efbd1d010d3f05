/** The plan of a row in a table that is there: what goes where, and what stands in the way. */
import { type Block, fault, type Step } from "../../host/port";
import type { RowValue } from "../record/row-values";
import { titrations } from "../tables/titrations";
import { finished } from "./finished";
import { placeOf } from "./headings";
import type { Plan, Refusal, Remark } from "./plan";
import { recordedBefore } from "./recorded-before";
import { refusal } from "./refusal";
import { remarkWords } from "./remark-wording";
import { rowCells } from "./row-cells";
import type { Logbook, Snapshot } from "./snapshot";
import { targetRow } from "./target-row";

/** Without these a table of that name is something else. */
const essential = ["Lot", "Titre 1 mL"];

const refused = (code: Refusal["code"], sentence: string): Refusal => ({
  kind: "refused",
  code,
  sentence,
});

const missingFrom = (headings: readonly string[], wanted: readonly string[]): string[] =>
  wanted.filter((heading) => placeOf(heading, headings) === undefined);

/** Why no row can go into this table; undefined when one can. */
function hindrance({ sheets }: Snapshot, { table }: Logbook): Refusal | undefined {
  const { name, block, headings, isFiltered } = table;
  const missing = missingFrom(headings, essential);
  if (missing.length > 0) {
    return refused("name-taken", remarkWords.notOurTable(name, block.sheet, missing));
  }
  const found = sheets.sheets.find((sheet) => sheet.name === block.sheet);
  if (found?.isProtected) {
    return refusal(fault("sheet-protected", block.sheet));
  }
  return isFiltered ? refusal(fault("table-filtered", name)) : undefined;
}

function aboutColumns({ table }: Logbook, values: readonly RowValue[]): Remark[] {
  const { name, headings } = table;
  const lost = missingFrom(
    headings,
    values.map(({ heading }) => heading),
  );
  const results = missingFrom(
    headings,
    titrations.columns.filter(({ formula }) => formula).map(({ heading }) => heading),
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

function aboutRepeat(logbook: Logbook, values: readonly RowValue[]): Remark[] {
  const row = recordedBefore(logbook, values);
  if (row === undefined) return [];
  const code = "recorded-before";
  return [{ code, sentence: remarkWords.recordedBefore(row), confirm: code }];
}

export function planRow(
  snapshot: Snapshot,
  logbook: Logbook,
  values: readonly RowValue[],
): Plan | Refusal {
  const stopped = hindrance(snapshot, logbook);
  if (stopped) return stopped;
  const { table } = logbook;
  const target = targetRow(logbook);
  if (target.isNew && table.hasTotals) {
    return refused("target-not-empty", remarkWords.totals(table.name));
  }
  const { contents, cells, remarks } = rowCells(logbook, target, values);
  const row: Block = { ...table.block, row: table.block.row + target.row, rows: 1 };
  const grown: Block = { ...table.block, rows: table.block.rows + 1 };
  const steps: Step[] = [
    ...(target.isNew ? [{ do: "grow-table", name: table.name, block: grown } as const] : []),
    { do: "set-cells", block: row, contents: [contents] },
    { do: "select", block: row },
  ];
  const which = `${target.isNew ? "A new row" : "The empty row"} ${String(row.row + 1)}`;
  return finished({
    summary: `${which} in the table ${table.name} on the sheet ${table.block.sheet}.`,
    cells,
    makes: [],
    remarks: [...aboutRepeat(logbook, values), ...aboutColumns(logbook, values), ...remarks],
    row,
    steps,
  });
}
