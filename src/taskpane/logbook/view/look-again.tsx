import { Button } from "@fluentui/react-components";
import type { StepProps } from "./step-props";

/** Looks through the workbook once more. */
export const LookAgain = ({ act }: Pick<StepProps, "act">) => (
  <Button
    size="large"
    className="wide"
    onClick={() => {
      act({ do: "look" });
    }}
  >
    Look again
  </Button>
);
