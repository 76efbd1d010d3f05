/** The words in passing of a step. */
import { Say } from "../../widgets/say";
import type { Nudge } from "../nudges/nudge";
import { capital } from "../../widgets/shown-number";
import { useMark } from "./desk";

function Said({ nudges }: { nudges: readonly Nudge[] }) {
  const inMark = useMark();
  return nudges.map(({ about, tone, sentence }) => (
    <Say key={about} tone={tone}>
      {inMark(capital(sentence))}
    </Say>
  ));
}

/** What is to be minded is said aloud when it appears; the rest is there to be read. */
export function Nudges({ nudges }: { nudges: readonly Nudge[] }) {
  return (
    <>
      <div role="status" aria-atomic="false">
        <Said nudges={nudges.filter(({ tone }) => tone === "check")} />
      </div>
      <Said nudges={nudges.filter(({ tone }) => tone === "know")} />
    </>
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
