/**
 * What a re-check found, put right in new columns beside the logbook: the right figure, or the formula that
 * gives it, in each row that is wrong, why not where no one figure is known to be right, and what the old
 * column holds in all others. No old cell is touched.
 */
import { cellName } from "../../../sheet/cell-name";
import type { Content, Host } from "../../../sheet/port";
import { refused } from "../../../sheet/refusal";
import type { Finding } from "../../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { heldCell, isHeld } from "../../../adopt/recognising/sheet-cells";
import type { Plan, Refusal } from "../plan";
import { type NewColumn, planBeside } from "./beside";
import { isFrom, rightContent, type Source, sourceOf } from "./recheck-lines";

const width = 16;

/** What was weighed was weighed, and where a reading may be the slip nobody knows which to put right. */
const isMendable = ({ role, oddInput }: Finding): boolean =>
  role !== "weighed" && oddInput === undefined;

/** The findings of one logbook that can be put right; none where its lots stand across. */
export const mendable = (findings: readonly Finding[], logbook: Logbook): readonly Finding[] =>
  logbook.cells.isAcross === true
    ? []
    : findings.filter((each) => isMendable(each) && isFrom(each, { logbook }));

function mendedColumn(source: Source, column: number, findings: readonly Finding[]): NewColumn {
  const { cells, mapping } = source.logbook;
  const byRow = new Map(findings.map((each) => [each.row, each]));
  const heading = mapping.columns.find((each) => each.column === column)?.heading ?? "";
  return {
    heading: `${heading}, put right`,
    width,
    content: (row): Content => {
      const held = heldCell(cells, row, column);
      const finding = byRow.get(row);
      if (finding) return rightContent(finding, source, held.format);
      if (!isHeld(held)) return { kind: "keep" };
      return { kind: "formula", formula: `=${cellName(row, column)}`, format: held.format };
    },
  };
}

export async function planMending(
  host: Host,
  logbook: Logbook,
  findings: readonly Finding[],
): Promise<Plan | Refusal> {
  const found = mendable(findings, logbook);
  if (found.length === 0) return refused("Nothing found here can be put right by a figure.");
  const source = sourceOf(logbook, "");
  const columns = [...new Set(found.map(({ column }) => column))].sort((a, b) => a - b);
  return planBeside(
    host,
    logbook.mapping,
    columns.map((column) =>
      mendedColumn(
        source,
        column,
        findings.filter(
          (each) => each.column === column && each.role !== "weighed" && isFrom(each, { logbook }),
        ),
      ),
    ),
    {
      what: "put it right beside",
      holds:
        "the right figure, or its formula, in each row that was found wrong; in all others what the old column holds",
    },
  );
}
