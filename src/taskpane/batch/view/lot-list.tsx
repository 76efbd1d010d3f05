/** The lots on record, each to be chosen; one without an acid value says why it cannot be. */
import { quantity } from "../../../core/quantity/quantity";
import { ffaAsOleic } from "../../../core/titration/free-fatty-acid";
import type { RecordedLot } from "../../../workbook/planning/read-lots";
import { lotMark } from "../../lots/lot-mark";
import { LotTicks } from "../../lots/lot-ticks";
import { noAcidWords } from "../../lots/not-yet";
import { doubtText } from "../../widgets/shown-number";
import { mostLots } from "../draft";
import { isUsedUp } from "../left-in-store";
import { useDesk, useMark } from "./desk";

const worthWords = ({ worth }: RecordedLot): string => {
  if (worth === undefined) return "";
  const isNotYet = worth.word === "Not yet";
  return `, ${isNotYet ? "titres disagree: titrate again" : worth.word.toLowerCase()}`;
};

const acidWords = (lot: RecordedLot): string => {
  const { acidValue, halfWidth } = lot;
  if (acidValue === undefined) return noAcidWords(lot);
  const ffa = ffaAsOleic(quantity("mg KOH/g", acidValue));
  return `${doubtText(ffa, halfWidth, 2)} % FFA${worthWords(lot)}`;
};

export function LotList() {
  const { view, act, store } = useDesk();
  const inMark = useMark();
  const { recorded, draft } = view;
  const isChosen = (lot: RecordedLot): boolean =>
    draft.lots.some((each) => each.lot === lotMark(lot));
  const isFull = draft.lots.length >= mostLots;
  return (
    <LotTicks
      lots={recorded}
      isChosen={isChosen}
      isBehind={(lot) => isUsedUp(lotMark(lot), store)}
      isOff={(lot) => !isChosen(lot) && (isFull || lot.acidValue === undefined)}
      label={(lot) => (
        <>
          <strong>{lotMark(lot)}</strong>{" "}
          <span>
            {inMark(acidWords(lot))}
            {lot.stage === "" ? "" : `, ${lot.stage}`}
            {isUsedUp(lotMark(lot), store) ? ", 0 L left" : ""}
          </span>
        </>
      )}
      onTick={(lot, chosen) => {
        act({ do: "choose-lot", lot, isChosen: chosen });
      }}
    />
  );
}
