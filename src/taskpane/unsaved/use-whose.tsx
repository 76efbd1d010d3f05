/** Beside a workbook in no file it is asked whether what is under way was begun beside this one. */
import { Button } from "@fluentui/react-components";
import { type ReactNode, useEffect, useState } from "react";
import { andList } from "../../sheet/and-list";
import type { KeptHere } from "../kept-here";
import { type Begun, underWayUnsaved } from "./under-way-unsaved";

export interface Whose {
  /** Whose drafts are offered. */
  readonly workbook: string;
  readonly question: ReactNode;
}

/** @param workbook as the program names it; "" while it is in no file */
export function useWhose(kept: KeptHere, workbook: string): Whose {
  const [asked, setAsked] = useState<readonly Begun[]>([]);
  const [chosen, setChosen] = useState("");
  useEffect(() => {
    let isCurrent = true;
    if (workbook === "")
      void underWayUnsaved(kept).then((found) => {
        if (isCurrent) setAsked(found);
      });
    return () => {
      isCurrent = false;
    };
  }, [kept, workbook]);
  const [first, ...others] = asked;
  if (workbook !== "") return { workbook, question: null };
  if (first === undefined) return { workbook: chosen, question: null };
  const names = andList(first.tasks);
  return {
    workbook: chosen,
    question: (
      <div className="question" role="group" aria-labelledby="whose-drafts">
        <p id="whose-drafts">
          {names} {first.tasks.length === 1 ? "was" : "were"} begun beside a workbook in no file:
          this one?
        </p>
        <Button
          size="large"
          onClick={() => {
            setChosen(first.workbook);
            setAsked([]);
          }}
        >
          Go on here
        </Button>
        <Button
          size="large"
          onClick={() => {
            if (others.length === 0) setChosen(kept.anotherUnsaved());
            setAsked(others);
          }}
        >
          Leave it
        </Button>
      </div>
    ),
  };
}
