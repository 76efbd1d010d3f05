/** Begins the next batch, or whatever it is; one that is not recorded is asked about first: it would be gone. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";

export interface BeginNextProps {
  /** "batch". */
  readonly what: string;
  /** Something was entered that stands in no row. */
  readonly isAtRisk: boolean;
  readonly onNew: () => void;
}

export function BeginNext({ what, isAtRisk, onNew }: BeginNextProps) {
  // once it was asked the focus goes back to where it came from; a step that changes takes it from there
  const [asking, setAsking] = useState<"no" | "yes" | "was asked">("no");
  if (asking !== "yes") {
    return (
      <Button
        key="ask"
        autoFocus={asking === "was asked"}
        onClick={() => {
          if (isAtRisk) setAsking("yes");
          else onNew();
        }}
      >
        New {what}
      </Button>
    );
  }
  const id = `leave-${what}`;
  return (
    <div className="question" role="group" aria-labelledby={id}>
      <p id={id}>This {what} is not recorded, and would be lost.</p>
      <Button
        autoFocus
        onClick={() => {
          setAsking("was asked");
        }}
      >
        Keep this one
      </Button>
      <Button
        onClick={() => {
          setAsking("was asked");
          onNew();
        }}
      >
        Start a new one
      </Button>
    </div>
  );
}
