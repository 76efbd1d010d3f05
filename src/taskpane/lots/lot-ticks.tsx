/** Recorded lots, each to be ticked: the latest at first, all of them at a press. */
import { Button, Checkbox } from "@fluentui/react-components";
import { type ReactNode, useState } from "react";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import { lotMark } from "./lot-mark";

/** So many of the latest are shown at first. */
const shownFirst = 8;

export interface LotTicksProps {
  readonly lots: readonly RecordedLot[];
  readonly isChosen: (lot: RecordedLot) => boolean;
  /** It cannot be chosen: it has no acid value, or there are enough. */
  readonly isOff: (lot: RecordedLot) => boolean;
  /** It comes into sight with all of them only: nothing of it is left. */
  readonly isBehind?: (lot: RecordedLot) => boolean;
  readonly label: (lot: RecordedLot) => ReactNode;
  readonly onTick: (mark: string, isChosen: boolean) => void;
  readonly children?: ReactNode;
}

export function LotTicks(props: LotTicksProps) {
  const { lots, isChosen, isOff, isBehind = () => false, label, onTick, children } = props;
  const [isWhole, setWhole] = useState(false);
  const first = lots.filter((lot) => !isBehind(lot)).slice(0, shownFirst);
  const listed = lots.filter((lot) => isWhole || first.includes(lot) || isChosen(lot));
  return (
    <fieldset className="ticks">
      <legend>Recorded lots, from the table Titrations</legend>
      {listed.map((lot) => (
        <Checkbox
          key={lotMark(lot)}
          size="large"
          checked={isChosen(lot)}
          disabled={isOff(lot)}
          label={{ children: label(lot) }}
          onChange={(_, { checked }) => {
            onTick(lotMark(lot), checked === true);
          }}
        />
      ))}
      {listed.length < lots.length ? (
        <Button
          size="large"
          className="wide"
          onClick={() => {
            setWhole(true);
          }}
        >
          Show all {lots.length} lots
        </Button>
      ) : null}
      {children}
    </fieldset>
  );
}
