/** The words in passing of a step. */
import { Say } from "../../widgets/say";
import type { Nudge } from "../nudges/nudge";
import { capital } from "../shown";
import { useMark } from "./desk";

export function Nudges({ nudges }: { nudges: readonly Nudge[] }) {
  const inMark = useMark();
  if (nudges.length === 0) return null;
  return (
    <div className="nudges">
      {nudges.map(({ about, tone, sentence }) => (
        <Say key={about} tone={tone}>
          {inMark(capital(sentence))}
        </Say>
      ))}
    </div>
  );
}

export function Tips({ tips }: { tips: readonly string[] }) {
  return (
    <details className="tips">
      <summary>At the bench</summary>
      <ul>
        {tips.map((tip) => (
          <li key={tip}>{tip}</li>
        ))}
      </ul>
    </details>
  );
}
