/** The whole what-if table as one formula in one cell: the cells it spills over must be empty. */
import { areaName } from "../../../sheet/cell-name";
import type { Block, Content, Host } from "../../../sheet/port";
import { tableName } from "../../what-if/names";
import { oneFormula } from "../../what-if/one-formula";
import type { WhatIfQuestion } from "../../what-if/question";
import { address, cellAt } from "../../../sheet/address";
import { finished } from "../finished";
import { plannedCell } from "../planned-cell";
import type { Plan, Refusal } from "../plan";
import { refused } from "../../../sheet/refusal";
import { filledIn } from "./what-if-chart";
import { type Around, readPlace } from "./what-if-place";
import { whatIfWords } from "./what-if-wording";

export async function planOneFormula(
  host: Host,
  around: Around,
  question: WhatIfQuestion,
  { at: corner, isNew }: { readonly at: Block; readonly isNew: boolean },
): Promise<Plan | Refusal> {
  const found = oneFormula(question);
  if (found.kind === "not-offered") return refused(found.why);
  const at: Block = { ...corner, rows: found.rows, columns: found.columns };
  if (!isNew) {
    const there = await readPlace(host, around, at);
    if (there.kind === "refused") return there;
    const filled = filledIn(there);
    if (filled.length > 0) return refused(whatIfWords.spillsOver(filled));
  }
  const cell = cellAt(at.sheet, at.row, at.column);
  const content: Content = { kind: "formula", formula: found.formula };
  return finished({
    what: "write the what-if formula",
    where: `${areaName(cell)} of the sheet ${at.sheet}, and fills ${areaName(at)}`,
    summary: `${isNew ? `A new sheet ${at.sheet}, ${areaName(cell)}` : address(cell)}: one formula that fills ${areaName(at)}, ${tableName(question)}.`,
    cells: [plannedCell({ block: cell, heading: "One formula", content })],
    makes: isNew ? [`The sheet ${at.sheet}.`] : [],
    remarks: [],
    block: cell,
    table: "",
    steps: [
      ...(isNew ? [{ do: "add-sheet", name: at.sheet } as const] : []),
      { do: "set-cells", block: cell, contents: [[content]] },
      { do: "select", block: cell },
    ],
  });
}
