/**
 * The heading of a step. When the step changes the focus goes to the first field that wants something,
 * or to the heading where none does, and the step is said aloud. Enter on it goes on.
 */
import { useEffect, useRef, useState } from "react";
import { wantedField } from "./wanted-field";

export interface StepHeadingProps {
  readonly name: string;
  /** Counted from 0. */
  readonly at: number;
  readonly of: number;
  /** Opened by hand: then the focus comes in at once. A pane that opens leaves it in the spreadsheet. */
  readonly takesFocus: boolean;
  /** Another each time somebody asked for this from elsewhere: the focus comes in anew. */
  readonly turn: number | undefined;
  readonly onEnter: () => void;
}

/** One of the pane's tasks was pressed just now. */
const isByTask = (): boolean => document.activeElement?.closest("nav.tasks") !== null;

export function StepHeading({ name, at, of, takesFocus, turn, onEnter }: StepHeadingProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef<string | undefined>(undefined);
  const [isSaid, setSaid] = useState(false);
  const where = `${at + 1} of ${of}`;
  const key = `${name} ${String(turn)}`;
  useEffect(() => {
    const isFirst = shown.current === undefined;
    const comesIn = isFirst
      ? takesFocus || turn !== undefined || isByTask()
      : shown.current !== key;
    shown.current = key;
    const top = heading.current;
    if (!comesIn || top === null) return;
    const field = wantedField(top.closest(".task") ?? document.body, top);
    (field ?? top).focus({ preventScroll: field !== undefined });
    top.scrollIntoView({ block: "nearest" });
    setSaid(true);
  }, [name, where, key, takesFocus, turn]);
  return (
    <>
      <h2
        ref={heading}
        tabIndex={-1}
        data-step=""
        onKeyDown={(event) => {
          if (event.key !== "Enter" || event.repeat) return;
          event.preventDefault();
          onEnter();
        }}
      >
        {name} <span className="soft">{where}</span>
      </h2>
      <p className="unseen" role="status">
        {isSaid ? `${name} ${where}` : ""}
      </p>
    </>
  );
}
