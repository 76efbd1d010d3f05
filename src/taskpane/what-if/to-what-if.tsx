/** From a batch under way to a table over its sizes, in one press. */
import { Button } from "@fluentui/react-components";
import { useOpenTask } from "../open-task";

/** @param keep writes down what was typed last: the table begins from what is kept */
export function ToWhatIf({ keep }: { keep: () => void }) {
  const open = useOpenTask();
  if (open === undefined) return null;
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        keep();
        open("what-if", "");
      }}
    >
      What if
    </Button>
  );
}
