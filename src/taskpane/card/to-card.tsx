/** From a recorded batch to its bench card, in one press. */
import { Button } from "@fluentui/react-components";
import { useOpenTask } from "../open-task";

/** @param batch its number or name, as recorded */
export function ToCard({ batch }: { batch: string }) {
  const open = useOpenTask();
  if (open === undefined) return null;
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        open("card", batch);
      }}
    >
      Bench card
    </Button>
  );
}
