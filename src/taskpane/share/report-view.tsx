/** What was done to make the copy, and what was left as it is. */
import { leftWords, reportWords, type ShareReport } from "../../partner/sharing";

/** More are in the copy itself, on its sheet that says what it is. */
const shownAtMost = 50;

export function ReportView({ report }: { readonly report: ShareReport }) {
  const { left, readMe } = report;
  const more = left.length - shownAtMost;
  return (
    <>
      <ul className="report">
        {reportWords(report).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      {left.length === 0 ? null : (
        <details className="more" open={left.length <= 5}>
          <summary>Not converted ({left.length})</summary>
          <ul className="report">
            {left.slice(0, shownAtMost).map((each) => (
              <li key={`${each.cell} ${each.reason}`}>{leftWords(each)}</li>
            ))}
          </ul>
          {more > 0 ? <p>And {more} more.</p> : null}
        </details>
      )}
      {readMe === undefined ? null : (
        <p className="soft">
          The sheet {readMe} in the copy says what it is and what to change in it.
        </p>
      )}
    </>
  );
}
