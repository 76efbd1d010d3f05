/** The cells of the record's row in a table that is there, with what must be known or confirmed. */
import type { Content } from "../../../sheet/port";
import type { TableShape } from "../../tables/column";
import type { RowValue } from "../../tables/row-values";
import { address, cellAt } from "../../../sheet/address";
import { decided, type RowCell } from "../cell-content";
import { isHeading } from "../headings";
import type { PlannedCell, Remark } from "../plan";
import { plannedCell } from "../planned-cell";
import { remarkWords } from "../remark-wording";
import { contentText } from "../preview-text";
import { type Logbook, nowText, readCell } from "../snapshot";
import type { TargetRow } from "./target-row";

export interface RowCells {
  /** One for each column of the table. */
  readonly contents: readonly Content[];
  /** Those that get or hold something. */
  readonly cells: readonly PlannedCell[];
  readonly remarks: readonly Remark[];
}

interface Planned {
  readonly cell: PlannedCell;
  readonly remarks: readonly Remark[];
}

function planned(at: RowCell): Planned {
  const { logbook, target, column, heading, now, ours } = at;
  const { sheet, row, column: first } = logbook.table.block;
  const block = cellAt(sheet, row + target.row, first + column);
  const place = address(block);
  const { content, remark } = decided(at);
  const text = nowText(now);
  const staysInRow = now.value !== "" && now.formula === "" && content.kind === "keep";
  const remarks: Remark[] = remark ? [remark] : [];
  if (staysInRow) {
    remarks.push({ sentence: remarkWords.keptInRow(place, text) });
  }
  const format = now.format === "General" ? ours?.format : now.format;
  const shown = content.kind === "keep" ? text : contentText(content, format);
  return {
    cell: plannedCell({ block, heading, now: text, content, shown }),
    remarks,
  };
}

export function rowCells(
  logbook: Logbook,
  shape: TableShape,
  target: TargetRow,
  values: readonly RowValue[],
): RowCells {
  const all = logbook.table.headings.map((heading, column) =>
    planned({
      logbook,
      shape,
      target,
      column,
      heading,
      now: readCell(logbook, target.row, column),
      ours: shape.columns.find((each) => isHeading(each.heading, heading)),
      value: values.find((each) => isHeading(each.heading, heading))?.value,
    }),
  );
  return {
    contents: all.map(({ cell }) => cell.content),
    cells: all
      .map(({ cell }) => cell)
      .filter(({ content, now }) => content.kind !== "keep" || now !== ""),
    remarks: all.flatMap(({ remarks }) => remarks),
  };
}
