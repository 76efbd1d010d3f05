/** Which mistakes, how many, how much lye over and under; and when. */
import type { RecheckReport } from "../../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { allGrams, kindLines, monthLines, severalLine } from "../overview";

interface OverviewProps {
  readonly report: RecheckReport;
  readonly logbooks: readonly Logbook[];
}

const grams = (value: number): string => (value < 0.5 ? "" : value.toFixed(0));

/** How long a bar is beside the longest, in %. */
const share = (value: number, most: number): string =>
  `${String(most > 0 ? (100 * value) / most : 0)}%`;

export function Overview({ report, logbooks }: OverviewProps) {
  const kinds = kindLines(report);
  const all = allGrams(report);
  const several = severalLine(report);
  const months = monthLines(report, logbooks);
  const most = Math.max(0, ...months.flatMap(({ under, over }) => [under, over]));
  return (
    <>
      <div className="overview-box" role="region" aria-label="What was found" tabIndex={0}>
        <table className="overview">
          <caption>What was found</caption>
          <thead>
            <tr>
              <th scope="col">Mistake</th>
              <th scope="col">Figures</th>
              <th scope="col">g lye under</th>
              <th scope="col">g lye over</th>
            </tr>
          </thead>
          <tbody>
            {kinds.map(({ words, findings, under, over }) => (
              <tr key={words}>
                <th scope="row">{words}</th>
                <td>{findings.length}</td>
                <td>{grams(under)}</td>
                <td>{grams(over)}</td>
              </tr>
            ))}
            {several === undefined ? null : (
              <tr>
                <th scope="row">Several in one row, not told apart</th>
                <td />
                <td>{grams(several.under)}</td>
                <td>{grams(several.over)}</td>
              </tr>
            )}
          </tbody>
          {kinds.length < 2 ? null : (
            <tfoot>
              <tr>
                <th scope="row">All together</th>
                <td>{report.findings.length}</td>
                <td>{grams(all.under)}</td>
                <td>{grams(all.over)}</td>
              </tr>
            </tfoot>
          )}
        </table>
      </div>
      {months.length < 2 ? null : (
        <details className="more">
          <summary>Month by month</summary>
          <div className="overview-box" role="region" aria-label="Month by month" tabIndex={0}>
            <table className="overview">
              <thead>
                <tr>
                  <th scope="col">Month</th>
                  <th scope="col">Rows</th>
                  <th scope="col">g lye under</th>
                  <th scope="col">g lye over</th>
                </tr>
              </thead>
              <tbody>
                {months.map(({ month, rows, under, over }) => (
                  <tr key={month}>
                    <th scope="row">{month}</th>
                    <td>{rows}</td>
                    {[under, over].map((value, at) => (
                      <td key={String(at)}>
                        {grams(value)}
                        <span
                          className={at === 0 ? "bar bar-under" : "bar"}
                          style={{ width: share(value, most) }}
                        />
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </details>
      )}
    </>
  );
}
