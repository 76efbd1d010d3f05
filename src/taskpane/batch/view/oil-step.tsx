/** Oil: which lots, in which shares, how much, and how warm when it was measured. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { halfSolidWords } from "../../../core/batch/half-solid";
import { mostWater } from "../../../core/batch/route";
import { isProblem } from "../../../core/problem/problem";
import { WaterWays } from "../../water/ways";
import { amount } from "../amount-text";
import { isVolume } from "../working";
import { Choose, Figure, useDesk, useMark, Words } from "./desk";
import { FromStore } from "./from-store";
import { HowMuch } from "./how-much";
import { LotList } from "./lot-list";
import { temperatureWords } from "../../fields/fahrenheit";
import { Mixing } from "./mixing";
import { WetOil } from "./oil-water";
import { TooLittle } from "./too-much";

function Mass() {
  const { view } = useDesk();
  const { oilMass } = view.working;
  if (!isVolume(view.draft) || oilMass === undefined || isProblem(oilMass)) return null;
  return <Say tone="know">That is {amount(oilMass, view.mark)} kg of oil.</Say>;
}

function Cold() {
  const { view } = useDesk();
  const inMark = useMark();
  if (!isVolume(view.draft)) return null;
  const warm = view.figures.in("C", "temperature");
  const words = halfSolidWords(
    view.working.oil,
    warm,
    warm && temperatureWords(view.draft.typed.temperature, warm),
  );
  return words === undefined ? null : <Say tone="check">{inMark(words)}</Say>;
}

export function OilStep() {
  const { view, store } = useDesk();
  const [isFromStore, setFromStore] = useState((view.draft.typed.mostAcid ?? "") !== "");
  const isOpen = isFromStore && store.length > 0;
  const inMark = useMark();
  return (
    <>
      <Words field="batch" />
      <LotList />
      {store.length === 0 ? null : (
        <Button
          size="large"
          className="wide"
          aria-expanded={isOpen}
          onClick={() => {
            setFromStore(!isOpen);
          }}
        >
          Choose lots from store
        </Button>
      )}
      {isOpen ? <FromStore /> : null}
      <Mixing />
      {isOpen ? null : <HowMuch />}
      <Spoken>
        <Mass />
        <TooLittle />
        <Cold />
      </Spoken>
      <WaterWays
        by={view.draft.picked.waterBy}
        figures={view.figures}
        Choose={Choose}
        Figure={Figure}
        inMark={inMark}
        limit={mostWater}
      />
      <Spoken>
        <WetOil />
      </Spoken>
    </>
  );
}
