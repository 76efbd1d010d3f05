/** Begins the next batch; one that is not recorded yet is asked about first, since it would be gone. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { useDesk } from "./desk";

export function NewBatch({ onNew }: { onNew: () => void }) {
  const { view } = useDesk();
  // "kept" once it was asked and kept: the focus goes back to where it came from
  const [asking, setAsking] = useState<"no" | "yes" | "kept">("no");
  const { isRecorded, lots } = view.draft;
  const isWorthAsking = !isRecorded && lots.length > 0;
  if (asking !== "yes") {
    return (
      <Button
        key="ask"
        autoFocus={asking === "kept"}
        onClick={() => {
          if (isWorthAsking) setAsking("yes");
          else onNew();
        }}
      >
        New batch
      </Button>
    );
  }
  return (
    <div className="question" role="group" aria-labelledby="leave-batch">
      <p id="leave-batch">This batch is not recorded, and would be lost.</p>
      <Button
        autoFocus
        onClick={() => {
          setAsking("kept");
        }}
      >
        Keep this one
      </Button>
      <Button
        onClick={() => {
          setAsking("no");
          onNew();
        }}
      >
        Start a new one
      </Button>
    </div>
  );
}
