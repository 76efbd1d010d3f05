/** A result that is not worth a dose yet: used only once somebody says so, and that can be taken back. */
import { Button } from "@fluentui/react-components";
import { Say } from "../widgets/say";

export interface AllTheSameProps {
  readonly isUsed: boolean;
  /** What it is, where there may be several: "SW-17". */
  readonly what?: string;
  readonly onUse: (isUsed: boolean) => void;
}

export function AllTheSame({ isUsed, what = "it", onUse }: AllTheSameProps) {
  return (
    <>
      {isUsed ? <Say tone="check">{`You use ${what} all the same.`}</Say> : null}
      <Button
        size="large"
        className="wide"
        onClick={() => {
          onUse(!isUsed);
        }}
      >
        {isUsed ? `Do not use ${what}` : `Use ${what} all the same`}
      </Button>
    </>
  );
}
