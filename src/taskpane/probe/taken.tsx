/** A curve that is a titre already is not put in twice; a fresh one begins, and the last can be had back. */
import { Button } from "@fluentui/react-components";
import { Say } from "../widgets/say";

export interface TakenProps {
  /** The number of the titre that this curve is. */
  readonly titre: number;
  readonly onFresh: () => void;
}

export function Taken({ titre, onFresh }: TakenProps) {
  return (
    <>
      <div role="status">
        <Say tone="know">
          This curve is titre {titre} already. For the next titre begin a fresh one.
        </Say>
      </div>
      <Button size="large" className="wide" onClick={onFresh}>
        Begin a fresh curve
      </Button>
    </>
  );
}
