/** Amounts to weigh, in large type. */
import { Together } from "../../widgets/together";
import type { Line } from "../weigh-out";

export function Lines({ lines }: { lines: readonly Line[] }) {
  return (
    <ul className="amounts">
      {lines.map(({ what, figure, unit, also }) => (
        <li key={what}>
          <span className="amount-what">{what}</span>
          <span className="amount-figure">
            <strong>{figure}</strong> {unit}
          </span>
          {also.map((sentence) => (
            <span key={sentence} className="soft full">
              <Together>{sentence}</Together>
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
}
