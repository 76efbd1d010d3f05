/** Says what the selected cell holds and how it was worked out. */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { unreadable } from "../../sheet/formula/readable";
import { explainFormula, type Lookup } from "../../workbook/explain/explain";
import { meantFigure } from "../../workbook/explain/meant-figure";
import { spreadsheetReason } from "../../workbook/explain/spreadsheet-error";
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

/** An error that none of our functions gives. */
function Wrong({ error, formula, lookup }: { error: string; formula: string; lookup: Lookup }) {
  return (
    <p className="explain-problem">
      <strong>{error}</strong> {spreadsheetReason(error, formula, lookup)}
    </p>
  );
}

/** Without a formula: what was put in, or nothing. */
function PutIn({ cell: { error, held, lookup, text = "" } }: { cell: ShownCell }) {
  const meant = meantFigure(text);
  if (meant !== undefined) return <p className="explain-problem">{meant}</p>;
  if (error === undefined || held !== undefined) return <Hint />;
  return <Wrong error={error} formula="" lookup={lookup} />;
}

function Worked({ cell, formula }: { cell: ShownCell; formula: string }) {
  const calls = explainFormula(formula, cell.lookup);
  if (isProblem(calls)) return <p className="explain-problem">{say(calls)}</p>;
  const { error } = cell;
  const isExplained = error === undefined || calls.some(({ problem }) => problem !== undefined);
  return (
    <>
      {isExplained ? null : <Wrong error={error} formula={formula} lookup={cell.lookup} />}
      {calls.length === 0 ? (
        <p className="explain-hint">A formula of the spreadsheet itself.</p>
      ) : (
        calls.map((call) => <CallExplanationView key={call.start} call={call} />)
      )}
    </>
  );
}

/** The result is kept, and not worked out: said in words beside the grey of the sheet. */
function Held({ why, isEmpty }: { why: string; isEmpty: boolean }) {
  return (
    <p className="explain-held">
      <strong>Not worked out here{isEmpty ? "." : ": this is the result of before."}</strong> {why}
      {why === unreadable
        ? " Mend it: it cannot be saved so."
        : " A spreadsheet program works it out."}
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
        <PutIn cell={cell} />
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
