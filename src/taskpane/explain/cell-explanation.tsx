/** Says what the selected cell holds and how it was worked out. */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { explainFormula } from "../../workbook/explain/explain";
import { CallExplanationView } from "./call-explanation";
import type { ShownCell } from "./shown-cell";

function Hint() {
  return (
    <p className="explain-hint">
      Select a cell with a result to see how it was worked out. In a free cell, type{" "}
      <code>=TITRE.</code> for the list of functions.
    </p>
  );
}

function Worked({ cell, formula }: { cell: ShownCell; formula: string }) {
  const calls = explainFormula(formula, cell.lookup);
  if (isProblem(calls)) return <p className="explain-problem">{say(calls)}</p>;
  if (calls.length === 0)
    return <p className="explain-hint">A formula of the spreadsheet itself.</p>;
  return calls.map((call) => <CallExplanationView key={call.start} call={call} />);
}

/** The result is kept, and not worked out: said in words beside the grey of the sheet. */
function Held({ why, isEmpty }: { why: string; isEmpty: boolean }) {
  return (
    <p className="explain-held">
      <strong>Not worked out here{isEmpty ? "." : ": this is the result of before."}</strong> {why}{" "}
      A spreadsheet program works it out.
    </p>
  );
}

export function CellExplanation({ cell }: { cell: ShownCell | undefined }) {
  if (!cell) return <Hint />;
  const formula = cell.spilledFrom?.formula ?? cell.formula;
  return (
    <article className="explain">
      <h2>
        {cell.sheet} {cell.address}
      </h2>
      <p className="explain-value">{cell.shown === "" ? "Empty" : cell.shown}</p>
      {cell.held === undefined ? null : <Held why={cell.held} isEmpty={cell.shown === ""} />}
      {cell.doubt === undefined ? null : <p className="explain-held">{cell.doubt}</p>}
      {cell.note === "" ? null : <p className="explain-note">{cell.note}</p>}
      {cell.spilledFrom ? (
        <p className="explain-note">Spilled from {cell.spilledFrom.address}.</p>
      ) : null}
      {formula === "" ? (
        <Hint />
      ) : (
        <>
          <p className="explain-formula">
            <code>{formula}</code>
          </p>
          {cell.held === undefined ? <Worked cell={cell} formula={formula} /> : null}
        </>
      )}
    </article>
  );
}
