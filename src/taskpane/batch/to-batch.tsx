/** From a recorded titration to a batch of its lot, in one press. */
import { Button } from "@fluentui/react-components";
import { useOpenTask } from "../open-task";

/** @param lot as recorded */
export function ToBatch({ lot }: { lot: string }) {
  const open = useOpenTask();
  if (open === undefined) return null;
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        open("batch", lot);
      }}
    >
      Batch of this lot
    </Button>
  );
}
