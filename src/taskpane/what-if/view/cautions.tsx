/** The usual cautions: the first at once, all of them at a press. */
import { cautions } from "../../../core/batch/cautions";

export function Cautions() {
  return (
    <>
      <p className="caution">{cautions[0]}</p>
      <details className="more cautions">
        <summary>All cautions for a batch</summary>
        <ul>
          {cautions.slice(1).map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </details>
    </>
  );
}
