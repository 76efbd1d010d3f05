/** Acid values: typed, or those of recorded lots, which the table then follows by reference. */
import { Fragment } from "react";
import type { RecordedLot } from "../../../workbook/planning/read-lots";
import { AllTheSame } from "../../lots/all-the-same";
import { lotMark } from "../../lots/lot-mark";
import { LotTicks } from "../../lots/lot-ticks";
import { lotWorth, notYetOf } from "../../lots/not-yet";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { Choose, Figure, useDesk, useMark } from "./desk";
import { Figures } from "./figures-field";

const hasFigure = ({ acidValue }: RecordedLot): boolean => acidValue !== undefined && acidValue > 0;

const figureOf = ({ acidValue, trouble, worth }: RecordedLot): string =>
  acidValue === undefined
    ? trouble
    : `${acidValue.toFixed(2)} mg KOH/g${worth === undefined ? "" : `, ${worth.word.toLowerCase()}`}`;

/** The lye of a titrant was taken as pure: the acid is at most this, and so is its dose. */
function AsIfPure({ lots }: { lots: readonly RecordedLot[] }) {
  const found = lots.filter(({ isAsIfPure }) => isAsIfPure).map(lotMark);
  return found.length === 0 ? null : (
    <Say tone="check">
      {`Titrated with lye of unknown assay, so the acid value is at most this: ${found.join(", ")}.`}
    </Say>
  );
}

/** One for each chosen lot whose readings give no dose yet. */
function NotYet({ lots }: { lots: readonly RecordedLot[] }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  return lots.map((lot) => {
    const why = notYetOf(lot);
    return why === "" ? null : (
      <Fragment key={why}>
        <Say tone="check">{inMark(lotWorth(lot) ?? "")}</Say>
        <AllTheSame
          what={lotMark(lot)}
          isUsed={view.draft.usedAllTheSame.includes(why)}
          onUse={(isUsed) => {
            act({ do: "use-all-the-same", why, isUsed });
          }}
        />
      </Fragment>
    );
  });
}

export function AcidValues() {
  const { view, act } = useDesk();
  const inMark = useMark();
  const lots = view.lots ?? [];
  const isChosen = (lot: RecordedLot): boolean => view.draft.lots.includes(lotMark(lot));
  return (
    <>
      {lots.length === 0 ? null : (
        <LotTicks
          lots={lots}
          isChosen={isChosen}
          isOff={(lot) => !hasFigure(lot)}
          label={(lot) => inMark(`${lotMark(lot)}: ${figureOf(lot)}`)}
          onTick={(lot, chosen) => {
            act({ do: "choose-lot", lot, isChosen: chosen });
          }}
        >
          <AsIfPure lots={lots.filter(isChosen)} />
          <NotYet lots={lots.filter(isChosen)} />
        </LotTicks>
      )}
      <Choose field="acidIn" />
      <Figures list={view.draft.picked.acidIn === "value" ? "acid" : "ffa"} />
    </>
  );
}

function OneLot({ lots }: { lots: readonly RecordedLot[] }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const usable = lots.filter(hasFigure);
  const chosen = usable.filter((lot) => lotMark(lot) === view.draft.lot);
  const options = usable.map(
    (lot) => [lotMark(lot), inMark(`${lotMark(lot)}: ${figureOf(lot)}`)] as const,
  );
  return (
    <>
      <PickList
        label="Lot"
        value={view.draft.lot}
        options={[["", "Choose a lot"], ...options]}
        onPick={(lot) => {
          act({ do: "one-lot", lot });
        }}
      />
      <AsIfPure lots={chosen} />
      <NotYet lots={chosen} />
    </>
  );
}

/** The one acid value, when something else is compared. */
export function AcidFigure() {
  const { view } = useDesk();
  const lots = view.lots ?? [];
  const isOfLot = lots.length > 0 && view.draft.picked.acidFrom === "lot";
  return (
    <>
      {lots.length === 0 ? null : <Choose field="acidFrom" />}
      {isOfLot ? (
        <OneLot lots={lots} />
      ) : (
        <>
          <Choose field="acidIn" />
          <Figure field={view.draft.picked.acidIn === "value" ? "acid" : "ffa"} />
        </>
      )}
    </>
  );
}
