/**
 * What a task goes by, in one line: as My bench says, or otherwise for this time. Opened, it leads to where
 * that is changed: here for this time, or in My bench for good.
 */
import "./bench.css";
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Host } from "../../sheet/port";
import type { BenchValues } from "../../workbook/tables/bench";
import { useOpenTask } from "../open-task";
import { Say } from "../widgets/say";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { KeepBench } from "./keep-bench";
import { saysAllOf } from "./otherwise";

export interface BenchSaysProps {
  readonly host: Host;
  readonly mark: DecimalMark;
  /** What My bench says. */
  readonly bench: BenchValues;
  /** "KOH 0.1 mol/L", "burette 0.05 mL"; nothing is shown where all are empty. */
  readonly says: readonly string[];
  /** What My bench says otherwise: "Assay of the lye 90 %". */
  readonly otherwise: readonly string[];
  /** What My bench filled in of what was empty: "Burette step 0.05 mL". */
  readonly filled?: readonly string[];
  /** The figures of this time, as My bench would keep them. */
  readonly now: BenchValues;
  readonly onChange: () => void;
  readonly onUse: () => void;
}

const Filled = ({ filled }: { filled: readonly string[] }) => (
  <div role="status">
    {filled.length === 0 ? null : (
      <Say tone="know">Filled in from My bench: {filled.join(", ")}.</Say>
    )}
  </div>
);

interface LineProps extends BenchSaysProps {
  readonly onKept: () => void;
}

function Line({ host, mark, bench, says, otherwise, now, onChange, onUse, onKept }: LineProps) {
  const open = useOpenTask();
  const said = says.filter((each) => each !== "");
  if (said.length === 0) return null;
  const isOtherwise = otherwise.length > 0;
  /** My bench is named only where it says something of all that stands here. */
  const isOfBench = saysAllOf(bench, now);
  return (
    <details className="more bench-says">
      <summary>
        {isOtherwise || !isOfBench ? "This time" : "My bench"}: {said.join(" · ")}
      </summary>
      {isOtherwise ? (
        <p>My bench says {otherwise.join(", ")}. What is changed here holds for this time only.</p>
      ) : null}
      <div className="acts">
        {isOtherwise ? (
          <Button size="large" onClick={onUse}>
            Use My bench
          </Button>
        ) : null}
        <Button size="large" onClick={onChange}>
          Change this time
        </Button>
        {open === undefined || isOtherwise ? null : (
          <Button
            size="large"
            onClick={() => {
              open("bench", "", given(now));
            }}
          >
            Change for good
          </Button>
        )}
      </div>
      {isOtherwise ? (
        <KeepBench
          host={host}
          values={{ ...bench, ...now }}
          command="Keep for good in My bench"
          inMark={(text) => withMark(text, mark)}
          onKept={onKept}
        />
      ) : null}
    </details>
  );
}

export function BenchSays(props: BenchSaysProps) {
  const [isKept, setKept] = useState(false);
  return (
    <>
      <Filled filled={props.filled ?? []} />
      <Line
        {...props}
        onKept={() => {
          setKept(true);
        }}
      />
      <div role="status">
        {isKept && props.otherwise.length === 0 ? (
          <Say tone="know">Kept for good on the sheet My bench.</Say>
        ) : null}
      </div>
    </>
  );
}

const given = (now: BenchValues): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(now).filter(([, text]) => text !== ""));
