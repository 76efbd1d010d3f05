/** What a logbook's columns are, kept in a small table that everybody can see, read and change. */
import { counted } from "../../../sheet/counted";
import { areaName } from "../../../sheet/cell-name";
import {
  type Block,
  type Content,
  fault,
  type Host,
  isFault,
  type Step,
  type Table,
  type Values,
} from "../../../sheet/port";
import type { LogbookMapping } from "../../../adopt/recognising/mapping";
import {
  type RememberedRow,
  rememberedHeadings,
  rememberedRows,
  rememberedSheet,
  rememberedTable,
} from "../../../adopt/recognising/remembered";
import { cellAt } from "../../../sheet/address";
import { finished } from "../finished";
import type { Plan, PlannedCell, Refusal } from "../plan";
import { plannedCell } from "../planned-cell";
import { read, readTable } from "../read";
import { refusal } from "../refusal";
import { widthSteps } from "../sheet-steps";
import { contentText } from "../preview-text";

const headingRow = 2;
const widths = [18, 12, 9, 24, 30, 10, 14];
const words =
  "Which column of which logbook is what, as it was agreed in the pane. Change a word here, or delete the sheet: then the pane asks again.";

interface Remembered {
  readonly table: Table;
  readonly values: Values["values"];
}

/** The table and its rows; undefined when nothing was remembered. */
export async function readRemembered(host: Host): Promise<Remembered | undefined | Refusal> {
  const found = await readTable(host, rememberedTable);
  return isFault(found) ? refusal(found) : found;
}

const isOf = ({ sheet, place }: LogbookMapping, row: readonly unknown[]): boolean =>
  row[0] === sheet && Number(row[1]) === place.headingRow + 1;

const width = rememberedHeadings.length;
const value = (of: string | number): Content => ({ kind: "value", value: of });

function plannedCells(
  block: Block,
  contents: readonly (readonly Content[])[],
  now: Values["values"] | undefined,
): PlannedCell[] {
  return contents.flatMap((row, at) =>
    row.flatMap((content, column): PlannedCell[] => {
      if (content.kind !== "value") return [];
      const cell = cellAt(block.sheet, block.row + at, block.column + column);
      const held = now?.[at]?.[column];
      const nowText = held === undefined || typeof held === "object" ? "" : String(held);
      const shown = contentText(content);
      if (shown === nowText) return [];
      const heading = rememberedHeadings[column] ?? "";
      return [plannedCell({ block: cell, heading, now: nowText, content, shown })];
    }),
  );
}

function newSheet(rows: readonly RememberedRow[]): Plan {
  const sheet = rememberedSheet;
  const empty = (first: Content): Content[] =>
    Array.from({ length: width }, (_, at) => (at === 0 ? first : { kind: "keep" }));
  const contents: Content[][] = [
    empty({ kind: "value", value: "Columns of the logbook", style: "title" }),
    empty({ kind: "value", value: words, style: "words" }),
    rememberedHeadings.map((each): Content => ({ kind: "value", value: each, style: "heading" })),
    ...rows.map((row) => row.map(value)),
  ];
  const block: Block = { sheet, row: 0, column: 0, rows: contents.length, columns: width };
  const table: Block = { ...block, row: headingRow, rows: rows.length + 1 };
  return finished({
    what: "remember the columns",
    where: `${areaName(table)} of the sheet ${sheet}`,
    summary: `A new sheet ${sheet} with the table ${rememberedTable}: ${counted(rows.length, "line")}, which column is what.`,
    cells: plannedCells(block, contents, undefined),
    makes: [
      `The sheet ${sheet}, with a title and a line of guidance.`,
      `The table ${rememberedTable}.`,
    ],
    remarks: [],
    block,
    table: rememberedTable,
    steps: [
      { do: "add-sheet", name: sheet },
      { do: "set-cells", block, contents },
      { do: "add-table", name: rememberedTable, block: table },
      ...widthSteps(sheet, widths),
      { do: "freeze-rows", sheet, rows: headingRow + 1 },
    ],
  });
}

function changedTable(
  { table, values }: Remembered,
  mapping: LogbookMapping,
  rows: readonly RememberedRow[],
): Plan {
  const others = values
    .slice(1)
    .filter((row) => !isOf(mapping, row) && row.some((each) => each !== ""));
  const kept = others.map((row) => row.map((each) => (typeof each === "object" ? "" : each)));
  const all = [
    ...kept.map((row) => row.map((each): Content => ({ kind: "value", value: each }))),
    ...rows.map((row) => row.map(value)),
  ];
  const length = Math.max(all.length, table.block.rows - 1);
  const contents = Array.from(
    { length },
    (_, at) => all[at] ?? Array.from({ length: width }, () => value("")),
  );
  const block: Block = { ...table.block, row: table.block.row + 1, rows: length, columns: width };
  const changed = plannedCells(block, contents, values.slice(1));
  const lost = changed.filter((cell) => cell.now !== "");
  const grown: Step[] =
    length > table.block.rows - 1
      ? [{ do: "grow-table", name: table.name, block: { ...table.block, rows: length + 1 } }]
      : [];
  return finished({
    what: "remember the columns",
    where: `${areaName(block)} of the sheet ${block.sheet}`,
    summary: `The table ${rememberedTable} on the sheet ${block.sheet}: ${counted(rows.length, "line")} for this logbook, ${String(kept.length)} for others.`,
    cells: changed,
    makes: [],
    remarks:
      lost.length === 0
        ? []
        : [
            {
              sentence: `${counted(lost.length, "cell")} of the table ${lost.length === 1 ? "holds" : "hold"} something else now (${lost
                .slice(0, 3)
                .map((cell) => cell.address)
                .join(
                  ", ",
                )}${lost.length > 3 ? " and more" : ""}): ${lost.length === 1 ? "it is" : "they are"} written over.`,
              confirm: areaName(block),
            },
          ],
    block,
    table: table.name,
    steps: [...grown, { do: "set-cells", block, contents }],
  });
}

export async function planRemembering(
  host: Host,
  mapping: LogbookMapping,
): Promise<Plan | Refusal> {
  const rows = rememberedRows(mapping);
  const known = await readRemembered(host);
  if (known && "sentence" in known) return known;
  if (known) return changedTable(known, mapping, rows);
  const found = await read(host, [{ ask: "sheets" }]);
  if (isFault(found)) return refusal(found);
  const [sheets] = found;
  if (sheets.isProtected) return refusal(fault("workbook-protected"));
  if (sheets.sheets.some(({ name }) => name.toLowerCase() === rememberedSheet.toLowerCase()))
    return refusal(fault("name-taken", rememberedSheet));
  return newSheet(rows);
}
