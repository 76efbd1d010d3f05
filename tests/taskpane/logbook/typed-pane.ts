/** A logbook as rows of cells, put through the pane's own reducer, figure by figure. */
import {
  type Action,
  agreedTables,
  firstState,
  type LogbookState,
  reduce,
  shownTable,
} from "../../../src/taskpane/logbook/state";
import type { FoundTable } from "../../../src/taskpane/logbook/found-table";
import type { LogbookMapping } from "../../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";

/** @param formats by column; General where none is given */
export function sheetOf(
  rows: readonly (readonly LogbookValue[])[],
  formats: readonly string[] = [],
): SheetCells {
  const width = Math.max(...rows.map((row) => row.length));
  const wide = rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? ""));
  return {
    sheet: "Log",
    row: 0,
    column: 0,
    values: wide,
    formulas: wide.map((row) => row.map(() => "")),
    formats: wide.map((row, at) =>
      row.map((_, column) => (at === 0 ? "General" : (formats[column] ?? "General"))),
    ),
  };
}

export class Pane {
  state: LogbookState;

  constructor(readonly cells: SheetCells) {
    const tables = recogniseSheet(cells).map((guess) => ({ guess, cells, remembered: undefined }));
    this.state = reduce(firstState, { do: "found", tables });
  }

  act(...actions: readonly Action[]): this {
    this.state = actions.reduce(reduce, this.state);
    return this;
  }

  get table(): FoundTable {
    return shownTable(this.state) as FoundTable;
  }

  get mapping(): LogbookMapping {
    return this.table.mapping;
  }

  recheck() {
    this.act({ do: "agree" });
    return recheckAtOnce(
      agreedTables(this.state).map(({ mapping, cells }) => ({ mapping, cells })),
    );
  }
}
