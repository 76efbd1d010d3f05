/** What the ± is made of, as bars with their figures beside them. */
import { scaleLinear } from "d3-scale";
import type { Share } from "../shares";
import { capital } from "../../widgets/shown-number";

const full = scaleLinear().domain([0, 100]).range([0, 100]).clamp(true);

export function DoubtBars({ shares }: { shares: readonly Share[] }) {
  return (
    <ul className="bars">
      {shares.map(({ cause, percent }) => (
        <li key={cause}>
          <span>{capital(cause)}</span>
          <span className="bar-figure">{Math.round(percent)} % of it</span>
          <svg className="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
            <rect className="bar-trough" width="100" height="8" />
            <rect className="bar-fill" width={full(percent)} height="8" />
          </svg>
        </li>
      ))}
    </ul>
  );
}
