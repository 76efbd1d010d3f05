/** All findings of one cause, folded until it is opened: the caution once, then each with the way to its cell. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { counted } from "../../../sheet/counted";
import { ofTheBook } from "../../../adopt/recheck/reporting/caution";
import type { Finding } from "../../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { Say } from "../../widgets/say";
import type { Kind } from "../overview";
import { rowLine } from "../row-line";
import { One } from "./finding";

/** The worst: a long scroll tells no more. */
const shownFirst = 5;
const shownMore = 100;

const gramsWords = ({ under, over }: Kind): string =>
  [
    [under, "under"],
    [over, "over"],
  ]
    .flatMap(([grams, word]) =>
      Number(grams) < 0.5 ? [] : [`, ${Number(grams).toFixed(0)} g ${String(word)}`],
    )
    .join("");

interface KindFoundProps {
  readonly kind: Kind;
  readonly logbooks: readonly Logbook[];
  readonly isOnly: boolean;
  readonly inMark: (text: string) => string;
  readonly onJump: (finding: Finding) => void;
}

export function KindFound({ kind, logbooks, isOnly, inMark, onJump }: KindFoundProps) {
  const [isOpen, setOpen] = useState(isOnly);
  const [most, setMost] = useState(shownFirst);
  const { words, sentences, findings } = kind;
  const left = findings.length - most;
  return (
    <details
      className="more kind-found"
      open={isOpen}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>
        {words}: {counted(findings.length, "figure")}
        {gramsWords(kind)}
      </summary>
      {isOpen ? (
        <>
          {sentences.map((each) => (
            <p key={each}>{each}</p>
          ))}
          {findings.some(({ effect }) => effect) ? <Say tone="safety">{ofTheBook}</Say> : null}
          <ol className="findings" aria-label={words}>
            {findings.slice(0, most).map((finding) => (
              <One
                key={`${finding.sheet} ${finding.address}`}
                finding={finding}
                row={rowLine(finding, logbooks)}
                inMark={inMark}
                onJump={onJump}
              />
            ))}
          </ol>
          {left > 0 ? (
            <Button
              size="large"
              className="wide"
              onClick={() => {
                setMost(most + shownMore);
              }}
            >
              Show {Math.min(shownMore, left)} more of {left}
            </Button>
          ) : null}
        </>
      ) : null}
    </details>
  );
}
