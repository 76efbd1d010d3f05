/** One of our functions in the selected cell: its answer, its equation, its arguments, its help. */
import { sources } from "../../core/reference/sources";
import type { WorksheetFunction } from "../../functions/define";
import { helpPageName } from "../../functions/metadata";
import type { ArgumentExplanation } from "../../workbook/explain/argument";
import type { CallExplanation } from "../../workbook/explain/explain";

function ArgumentView({ argument }: { argument: ArgumentExplanation }) {
  const { name, says, unit, allowed, shown, problem, isLeftOut } = argument;
  return (
    <div className={problem === undefined ? "explain-argument" : "explain-argument is-wrong"}>
      <dt>
        {name} <span className="explain-unit">{unit}</span>
      </dt>
      <dd>
        <span className={isLeftOut ? "explain-left-out" : "explain-present"}>{shown}</span>
        <span className="explain-says">{says}</span>
        <span className="explain-allowed">Allowed: {allowed}.</span>
      </dd>
    </div>
  );
}

function Help({ entry }: { entry: WorksheetFunction }) {
  return (
    <details className="explain-help">
      <summary>Help for {entry.id}</summary>
      <ul>
        {entry.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <p>Sources: {entry.sources.map((id) => sources[id]).join("; ")}.</p>
      <p>
        <a href={`help/${helpPageName(entry.id)}`} target="_blank" rel="noreferrer">
          The whole page
        </a>
      </p>
    </details>
  );
}

export function CallExplanationView({ call }: { call: CallExplanation }) {
  const { entry, problem } = call;
  return (
    <section className="explain-call">
      <h3>{call.id}</h3>
      {entry ? (
        <p>
          {entry.summary} <span className="explain-unit">In {entry.result}.</span>
        </p>
      ) : null}
      {problem ? (
        <p className="explain-problem">
          <strong>{problem.shows}</strong> {problem.says}
        </p>
      ) : null}
      {entry ? (
        <>
          <p className="explain-equation">{call.equation}</p>
          {call.worked === undefined ? null : <p className="explain-equation">= {call.worked}</p>}
          <dl>
            {call.arguments.map((argument) => (
              <ArgumentView key={argument.name} argument={argument} />
            ))}
          </dl>
          <Help entry={entry} />
        </>
      ) : null}
    </section>
  );
}
