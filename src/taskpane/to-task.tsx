/** To the task that comes next, in one press: from what was recorded, or from what is under way. */
import { Button } from "@fluentui/react-components";
import { type Given, useOpenTask } from "./open-task";

interface ToTaskProps {
  readonly task: string;
  /** A batch's name, a lot's, as recorded; "" for what is under way. */
  readonly about: string;
  readonly words: string;
  /** What goes along. */
  readonly given?: Given;
  /** Done before: what was typed last is written down, where that task begins from what is kept. */
  readonly before?: () => void;
}

export function ToTask({ task, about, words, given, before }: ToTaskProps) {
  const open = useOpenTask();
  if (open === undefined) return null;
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        before?.();
        open(task, about, given);
      }}
    >
      {words}
    </Button>
  );
}
