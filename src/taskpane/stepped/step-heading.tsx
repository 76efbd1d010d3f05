/** The heading of a step. It takes the focus when the step changes, so that a listener hears it. */
import { useEffect, useRef } from "react";

export interface StepHeadingProps {
  readonly name: string;
  /** Counted from 0. */
  readonly at: number;
  readonly of: number;
  /** Opened by hand: then it takes the focus at once. A pane that opens leaves it in the spreadsheet. */
  readonly takesFocus: boolean;
}

export function StepHeading({ name, at, of, takesFocus }: StepHeadingProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef<string | undefined>(undefined);
  useEffect(() => {
    if (shown.current === undefined ? takesFocus : shown.current !== name) {
      heading.current?.focus();
      heading.current?.scrollIntoView({ block: "nearest" });
    }
    shown.current = name;
  }, [name, takesFocus]);
  return (
    <h2 ref={heading} tabIndex={-1}>
      {name}{" "}
      <span className="soft">
        {at + 1} of {of}
      </span>
    </h2>
  );
}
