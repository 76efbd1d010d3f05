/** Where a task says something else than My bench: what the bench says, and the way to it. */
import { Button } from "@fluentui/react-components";
import { Say } from "../widgets/say";

export interface BenchLineProps {
  /** What My bench says otherwise: "Assay of KOH 90 %". Empty: nothing is shown. */
  readonly otherwise: readonly string[];
  readonly onUse: () => void;
}

export function BenchLine({ otherwise, onUse }: BenchLineProps) {
  if (otherwise.length === 0) return null;
  return (
    <>
      <Say tone="know">My bench says {otherwise.join(", ")}.</Say>
      <Button size="large" className="wide" onClick={onUse}>
        Use My bench
      </Button>
    </>
  );
}
