/** The lots on record, each to be chosen; one without an acid value says why it cannot be. */
import { Button, Checkbox } from "@fluentui/react-components";
import { useState } from "react";
import { quantity } from "../../../core/quantity/quantity";
import { ffaAsOleic } from "../../../core/titration/free-fatty-acid";
import type { RecordedLot } from "../../../workbook/planning/read-lots";
import { fixed } from "../../titrate/shown";
import { mostLots } from "../draft";
import { lotMark } from "../mix";
import { useDesk, useMark } from "./desk";

/** So many of the latest are shown at first. */
const shownFirst = 8;

const acidWords = ({ acidValue, halfWidth, trouble }: RecordedLot): string => {
  if (acidValue === undefined) return `no dose: its acid value shows ${trouble}`;
  const ffa = ffaAsOleic(quantity("mg KOH/g", acidValue));
  return `${fixed(ffa, 2)}${halfWidth === undefined ? "" : ` ± ${fixed(halfWidth, 2)}`} % FFA`;
};

export function LotList() {
  const { view, act } = useDesk();
  const inMark = useMark();
  const [isWhole, setWhole] = useState(false);
  const { recorded, draft } = view;
  const isChosen = (lot: RecordedLot): boolean =>
    draft.lots.some((each) => each.lot === lotMark(lot));
  const listed = recorded.filter((lot, at) => isWhole || at < shownFirst || isChosen(lot));
  const isFull = draft.lots.length >= mostLots;
  return (
    <fieldset className="lot-list">
      <legend>Lots from the table Titrations</legend>
      {listed.map((lot) => {
        const mark = lotMark(lot);
        return (
          <Checkbox
            key={mark}
            size="large"
            checked={isChosen(lot)}
            disabled={!isChosen(lot) && (isFull || lot.acidValue === undefined)}
            label={
              <>
                <strong>{mark}</strong>{" "}
                <span>
                  {inMark(acidWords(lot))}
                  {lot.stage === "" ? "" : `, ${lot.stage}`}
                </span>
              </>
            }
            onChange={(_, { checked }) => {
              act({ do: "choose-lot", lot: mark, isChosen: checked === true });
            }}
          />
        );
      })}
      {listed.length < recorded.length ? (
        <Button
          size="large"
          className="wide"
          onClick={() => {
            setWhole(true);
          }}
        >
          Show all {recorded.length} lots
        </Button>
      ) : null}
    </fieldset>
  );
}
