/** A planned change on screen: what would be done, agreeing to it, and what came of it. */
import { Button } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { Say } from "../widgets/say";
import { type InMark, PlanView } from "./plan-view";
import type { Planned } from "./use-planned";

export interface PlannedChangeProps {
  readonly planned: Planned;
  /** On the button: "Record this titration". */
  readonly command: string;
  /** While it is written: "Writing the row." */
  readonly busyWords: string;
  readonly inMark: InMark;
  /** What undo does to it, once it is written: "takes the row back". */
  readonly undoTakes: string;
  /** Of a part that was not to be written over: what stands there stays. */
  readonly onKeep?: (id: string) => void;
  /** Shown once it is written: what is next. */
  readonly afterwards?: ReactNode;
}

/** One undo is promised only where one is enough; whose it is, the page's or the program's, each host shows itself. */
const undoSentence = (takes: string, isOneUndo: boolean): string =>
  isOneUndo ? `Undo ${takes}.` : `Undo ${takes}, but may have to be pressed several times.`;

export function PlannedChange(props: PlannedChangeProps) {
  const { planned, command, busyWords, inMark, undoTakes, afterwards, onKeep } = props;
  const { carrying, isTried, again, takeNextFree, carryOut } = planned;
  const isDone = carrying.state === "written";
  const isWell = isDone && carrying.isWell;
  const hasNextFree = carrying.state === "refused" && carrying.hasNextFree;
  const said = "sentence" in carrying ? carrying.sentence : undefined;
  return (
    <>
      <div role="status" className="outcome">
        {carrying.state === "looking" ? "Looking at the workbook." : null}
        {carrying.state === "writing" ? busyWords : null}
        {said === undefined ? null : <Say tone={isWell ? "know" : "check"}>{inMark(said)}</Say>}
      </div>
      {hasNextFree ? (
        <Button
          size="large"
          appearance="primary"
          className="wide"
          autoFocus={isTried}
          onClick={takeNextFree}
        >
          Use the next free row
        </Button>
      ) : null}
      {carrying.state === "refused" || carrying.state === "not known" ? (
        <Button size="large" className="wide" autoFocus={isTried && !hasNextFree} onClick={again}>
          Look again
        </Button>
      ) : null}
      {carrying.state === "planned" || carrying.state === "writing" ? (
        <PlanView
          plan={carrying.plan}
          isBusy={carrying.state === "writing"}
          command={command}
          inMark={inMark}
          takesFocus={isTried}
          {...(onKeep ? { onKeep } : {})}
          onAgreed={(agreed) => void carryOut(carrying.plan, agreed)}
        />
      ) : null}
      {isDone ? (
        <>
          {carrying.differences.map((sentence) => (
            <Say key={sentence} tone="check">
              {sentence}
            </Say>
          ))}
          <p>{undoSentence(undoTakes, carrying.isOneUndo)}</p>
          {afterwards}
        </>
      ) : null}
    </>
  );
}
