/** A draft that another tab writes: it can be read here, and taken over. */
import { Button } from "@fluentui/react-components";
import { type ReactNode, useLayoutEffect, useRef } from "react";
import { asRef } from "../widgets/as-ref";
import { Say } from "../widgets/say";
import type { Held } from "./use-holding";

const words = {
  reads: "This is open in another tab or window, which keeps what is typed. Here it can be read.",
  lost: "This was taken over in another tab or window, with what you typed. Here it can be read.",
};

export interface HeldElsewhereProps {
  readonly held: Held;
  /** Something else to do here, that stays open. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

export function HeldElsewhere({ held, aside, children }: HeldElsewhereProps) {
  const { standing, isWriter, takeOver } = held;
  const fields = useRef<HTMLFieldSetElement>(null);
  const way = useRef<HTMLButtonElement>(null);
  // fields that cannot be typed in keep no focus: it goes to the way out, not to the top of the page
  useLayoutEffect(() => {
    if (isWriter || !document.hasFocus()) return;
    const { activeElement, body } = document;
    if (activeElement === body || fields.current?.contains(activeElement)) way.current?.focus();
  }, [isWriter]);
  return (
    <>
      <div role="status">
        {standing === "reads" || standing === "lost" ? (
          <div className="task">
            <Say tone="check">{words[standing]}</Say>
          </div>
        ) : null}
      </div>
      {isWriter ? null : (
        <div className="task">
          <Button
            ref={asRef(way)}
            size="large"
            appearance="primary"
            className="wide"
            onClick={takeOver}
          >
            Take over here
          </Button>
          {aside}
        </div>
      )}
      <fieldset ref={fields} className="held" disabled={!isWriter}>
        {children}
      </fieldset>
    </>
  );
}
