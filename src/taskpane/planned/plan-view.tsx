/** What a change would do, cell by cell, and what must be agreed to first. */
import { Button, Checkbox } from "@fluentui/react-components";
import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import type { Plan, PlannedCell } from "../../workbook/planning/plan";
import { asRef } from "../widgets/as-ref";
import { Say } from "../widgets/say";
import { isAgreed } from "./carrying";

/** The address without its sheet, which the summary names. */
const short = (address: string): string => address.slice(address.lastIndexOf("!") + 1);

function CellRow({ cell, inMark }: { cell: PlannedCell; inMark: InMark }) {
  const { content } = cell;
  const isFormula = content.kind === "formula";
  const isFigure = content.kind === "value" && typeof content.value === "number";
  return (
    <div className={isFormula ? "is-formula" : ""}>
      <dt>
        {cell.heading} <span className="soft address">{short(cell.address)}</span>
      </dt>
      <dd>
        {isFormula ? <code>{cell.shown}</code> : isFigure ? inMark(cell.shown) : cell.shown}
        {cell.mustConfirm ? <span className="soft now">now: {cell.now}</span> : null}
      </dd>
    </div>
  );
}

/** A figure in this person's way of writing numbers. */
export type InMark = (text: string) => string;

export interface PlanViewProps {
  readonly plan: Plan;
  readonly isBusy: boolean;
  /** On the button: "Record this titration". */
  readonly command: string;
  readonly inMark: InMark;
  /** The focus comes to the command when this is first shown. */
  readonly takesFocus: boolean;
  readonly onAgreed: (agreed: readonly string[]) => void;
  /** What stands there stays: this part is not to be written. */
  readonly onKeep?: (id: string) => void;
}

/** Nobody has gone on from the heading of the step: the command is what comes next. */
const isAtHeading = (): boolean => document.activeElement?.matches("h2[data-step]") === true;

/** A table of thousands of cells is not drawn whole until somebody asks for it. */
const shownFirst = 60;

function ExactCells({ cells, inMark }: { cells: readonly PlannedCell[]; inMark: InMark }) {
  const [isWhole, setWhole] = useState(false);
  const more = isWhole ? 0 : Math.max(0, cells.length - shownFirst);
  return (
    <>
      <dl className="cells">
        {cells.slice(0, cells.length - more).map((cell) => (
          <CellRow key={cell.address} cell={cell} inMark={inMark} />
        ))}
      </dl>
      {more === 0 ? null : (
        <Button
          size="large"
          className="wide"
          onClick={() => {
            setWhole(true);
          }}
        >
          Show the other {more} cells
        </Button>
      )}
    </>
  );
}

/** Drawn on while the plan changes: a button that is being pressed must not be put away for its like. */
export function PlanView(props: PlanViewProps) {
  const { plan, isBusy, command, inMark, takesFocus, onAgreed, onKeep } = props;
  /** The sentences agreed to: when one says something else, it is to be agreed to anew. */
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (takesFocus || isAtHeading()) button.current?.focus();
  }, [takesFocus]);
  const agreed = plan.remarks.flatMap(({ sentence, confirm }) =>
    confirm !== undefined && ticked.includes(sentence) ? [confirm] : [],
  );
  return (
    <>
      <p>{plan.summary}</p>
      {plan.remarks.map(({ sentence, confirm, agreeing, keeping }) =>
        confirm === undefined ? (
          <Say key={sentence} tone="know">
            {sentence}
          </Say>
        ) : (
          <div key={sentence} className="to-confirm">
            <Say tone="check">{sentence}</Say>
            <Checkbox
              size="large"
              label={agreeing ?? `Do it all the same: ${confirm}`}
              checked={ticked.includes(sentence)}
              onChange={(_, { checked }) => {
                setTicked((was) =>
                  checked === true ? [...was, sentence] : was.filter((each) => each !== sentence),
                );
              }}
            />
            {keeping === undefined || onKeep === undefined ? null : (
              <Button
                size="large"
                onClick={() => {
                  onKeep(keeping.id);
                }}
              >
                {inMark(keeping.words)}
              </Button>
            )}
          </div>
        ),
      )}
      <Button
        size="large"
        appearance="primary"
        className="wide"
        ref={asRef(button)}
        // a key held down on the way here must not write
        onKeyDown={(event: KeyboardEvent) => {
          if (event.repeat) event.preventDefault();
        }}
        disabledFocusable={isBusy || !isAgreed(plan, agreed)}
        onClick={() => {
          onAgreed(agreed);
        }}
      >
        {command}
      </Button>
      <details className="more">
        <summary>The exact cells</summary>
        <ExactCells cells={plan.cells} inMark={inMark} />
        {plan.makes.length === 0 ? null : (
          <>
            <h3>Made for it</h3>
            <ul>
              {plan.makes.map((what) => (
                <li key={what}>{what}</li>
              ))}
            </ul>
          </>
        )}
      </details>
    </>
  );
}
