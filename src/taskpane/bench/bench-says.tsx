/**
 * What a task goes by, in one line: as My bench says, or otherwise for this time. Opened, it leads to where
 * that is changed: here for this time, or in My bench for good.
 */
import "./bench.css";
import { Button } from "@fluentui/react-components";
import type { BenchValues } from "../../workbook/tables/bench";
import { useOpenTask } from "../open-task";
import { Say } from "../widgets/say";

export interface BenchSaysProps {
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

function Line({ says, otherwise, now, onChange, onUse }: BenchSaysProps) {
  const open = useOpenTask();
  const said = says.filter((each) => each !== "");
  if (said.length === 0) return null;
  const isOtherwise = otherwise.length > 0;
  return (
    <details className="more bench-says">
      <summary>
        {isOtherwise ? "This time" : "My bench"}: {said.join(" · ")}
      </summary>
      {isOtherwise ? <p>My bench says {otherwise.join(", ")}.</p> : null}
      <div className="acts">
        {isOtherwise ? (
          <Button size="large" onClick={onUse}>
            Use My bench
          </Button>
        ) : null}
        <Button size="large" onClick={onChange}>
          Change this time
        </Button>
        {open === undefined ? null : (
          <Button
            size="large"
            onClick={() => {
              open("bench", "", given(now));
            }}
          >
            {isOtherwise ? "Keep for good" : "Change for good"}
          </Button>
        )}
      </div>
    </details>
  );
}

export function BenchSays(props: BenchSaysProps) {
  return (
    <>
      <Filled filled={props.filled ?? []} />
      <Line {...props} />
    </>
  );
}

const given = (now: BenchValues): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(now).filter(([, text]) => text !== ""));
