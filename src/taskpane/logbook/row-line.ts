/** The row of a finding as a line of figures. */
import type { Finding } from "../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../adopt/recheck/recheck";
import { shownCell } from "./shown-cell";

interface RowFigure {
  readonly column: number;
  readonly heading: string;
  readonly shown: string;
}

const unused = new Set(["other", "note"]);

/** What its row holds beside the figure that was found; nothing where the logbook is no longer known. */
export function rowLine(finding: Finding, logbooks: readonly Logbook[]): readonly RowFigure[] {
  const book = logbooks.find(
    ({ mapping, cells }) =>
      mapping.sheet === finding.sheet &&
      mapping.columns.some(
        ({ column }) => column === (cells.isAcross === true ? finding.row : finding.column),
      ),
  );
  if (!book) return [];
  const { mapping, cells } = book;
  const [row, own] =
    cells.isAcross === true ? [finding.column, finding.row] : [finding.row, finding.column];
  return mapping.columns.flatMap(({ column, heading, role }) => {
    const shown = shownCell(cells, row, column, mapping.dates);
    return unused.has(role) || column === own || shown === "" ? [] : [{ column, heading, shown }];
  });
}
