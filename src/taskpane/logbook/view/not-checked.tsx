/** Rows that were passed over, each with why: nobody is to take them for right. */
import type { RecheckReport } from "../../../adopt/recheck/reporting/finding";
import { uncheckedWords } from "../../../adopt/recheck/reporting/unchecked";
import { Say } from "../../widgets/say";

const shownFirst = 12;

/** What the summary says of doses is not said again. */
export function NotChecked({ report }: { report: RecheckReport }) {
  const unchecked = report.unchecked.filter(
    ({ why, doubt }) => why !== report.noDose && doubt === undefined,
  );
  const more = unchecked.length - shownFirst;
  return (
    <>
      {unchecked.slice(0, shownFirst).map((each) => (
        <Say key={`${each.sheet} ${each.why}`} tone="check">
          {uncheckedWords(each)}
        </Say>
      ))}
      {more > 0 ? <p>Other rows are not checked for {more} more reasons.</p> : null}
    </>
  );
}
