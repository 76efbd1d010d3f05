/** A maker's way through the pane: columns put right, figures typed as they are asked for, agreed, re-checked. */
import { runRecheck } from "../../../src/taskpane/logbook/run-recheck";
import {
  type Action,
  agreedTables,
  firstState,
  type LogbookState,
  reduce,
} from "../../../src/taskpane/logbook/state";
import type { Logbook } from "../../../src/adopt/recheck/recheck";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { RecheckReport } from "../../../src/adopt/recheck/reporting/finding";
import { answers } from "./answers";
import type { MadeLogbook } from "./logbook";

export interface Checked {
  readonly report: RecheckReport;
  /** Sheets whose table was not found where it stands. */
  readonly lost: number;
  /** The logbooks as they were agreed. */
  readonly books: readonly Logbook[];
}

/** Every table of the workbook understood as its maker knows it to be. */
function understood(made: MadeLogbook): { state: LogbookState; lost: number } {
  const tables = made.sheets.flatMap(({ cells }) =>
    recogniseSheet(cells)
      .filter(({ isLogbook }) => isLogbook)
      .map((guess) => ({ guess, cells, remembered: undefined })),
  );
  let state = reduce(firstState, { do: "found", tables });
  let lost = 0;
  for (const { cells, headingRow, columns } of made.sheets) {
    const at = state.tables.findIndex(
      (each) =>
        each.cells === cells &&
        each.guess.place.headingRow === headingRow &&
        each.guess.place.firstColumn === 0,
    );
    if (at < 0) {
      lost += 1;
      continue;
    }
    state = reduce(state, { do: "show", at });
    for (const action of answers(state, made, columns)) state = reduce(state, action);
    state = reduce(state, { do: "agree" });
  }
  return { state, lost };
}

export async function rechecked(made: MadeLogbook): Promise<Checked> {
  const { state, lost } = understood(made);
  const books = agreedTables(state).map(({ mapping, cells }) => ({ mapping, cells }));
  const report = await new Promise<RecheckReport>((done) => {
    runRecheck(books, (action: Action) => {
      if (action.do === "checked") done(action.report);
    });
  });
  return { report, lost, books };
}
