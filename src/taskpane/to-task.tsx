/** From what was recorded to the task that comes next, in one press. */
import { Button } from "@fluentui/react-components";
import { useOpenTask } from "./open-task";

interface ToTaskProps {
  readonly task: string;
  /** A batch's name, a lot's, as recorded. */
  readonly about: string;
  readonly words: string;
}

export function ToTask({ task, about, words }: ToTaskProps) {
  const open = useOpenTask();
  if (open === undefined) return null;
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        open(task, about);
      }}
    >
      {words}
    </Button>
  );
}
