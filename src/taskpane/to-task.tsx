/** From what was recorded to the task that comes next, in one press. */
import { Button } from "@fluentui/react-components";
import { type Given, useOpenTask } from "./open-task";

interface ToTaskProps {
  readonly task: string;
  /** A batch's name, a lot's, as recorded. */
  readonly about: string;
  readonly words: string;
  /** What goes along. */
  readonly given?: Given;
}

export function ToTask({ task, about, words, given }: ToTaskProps) {
  const open = useOpenTask();
  if (open === undefined) return null;
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        open(task, about, given);
      }}
    >
      {words}
    </Button>
  );
}
