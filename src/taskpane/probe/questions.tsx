/** Readings that go against the curve, each asked about; what was said of one can be taken back. */
import { Button } from "@fluentui/react-components";
import { Say } from "../widgets/say";
import { Spoken } from "../widgets/spoken";
import type { OddReadings } from "./odd-readings";
import { type PairsRead, type Said, withSaid } from "./read-pairs";

export interface QuestionsProps {
  readonly read: PairsRead;
  readonly found: OddReadings;
  readonly text: string;
  readonly onText: (text: string) => void;
}

const mostAtOnce = 3;

export function Questions({ read, found, text, onText }: QuestionsProps) {
  const say = (line: number, said: Said) => () => {
    onText(withSaid(text, line, said));
  };
  const leftOut = read.rows.filter(({ said }) => said === "left out");
  return (
    <>
      <Spoken>
        {found.isUnsteady ? (
          <Say tone="check">The readings go up and down. Is the probe steady?</Say>
        ) : null}
        {found.odd.length === 0 ? null : (
          <Say tone="check">
            {found.odd
              .slice(0, mostAtOnce)
              .map(({ question }) => question)
              .join(" ")}
          </Say>
        )}
      </Spoken>
      {found.odd.slice(0, mostAtOnce).map(({ line, question }) => (
        <div
          className="acts probe-acts"
          key={line}
          role="group"
          aria-label={question}
          tabIndex={-1}
          data-asked=""
        >
          <Button size="large" onClick={say(line, "left out")}>
            Leave out line {line}
          </Button>
          <Button size="large" onClick={say(line, "kept")}>
            Keep line {line}
          </Button>
        </div>
      ))}
      {leftOut.map(({ line }) => (
        <Button key={line} size="large" className="wide" onClick={say(line, "")}>
          Take line {line} in again
        </Button>
      ))}
    </>
  );
}
