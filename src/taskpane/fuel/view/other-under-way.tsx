/** A batch was opened while another's fuel is under way: asked first, since that would be gone. */
import { Button } from "@fluentui/react-components";

export interface OtherUnderWayProps {
  readonly here: string;
  readonly wanted: string;
  readonly onKeep: () => void;
  readonly onStart: () => void;
}

export function OtherUnderWay({ here, wanted, onKeep, onStart }: OtherUnderWayProps) {
  return (
    <div className="question" role="group" aria-labelledby="leave-other">
      <p id="leave-other">The fuel of {here} is not recorded, and would be lost.</p>
      <Button autoFocus onClick={onKeep}>
        Go on with {here}
      </Button>
      <Button onClick={onStart}>Start {wanted}</Button>
    </div>
  );
}
