/** Two lots or more: how they are mixed, and what the mix holds. */
import { isProblem } from "../../../core/problem/problem";
import { lotMark } from "../../lots/lot-mark";
import { NumberField } from "../../widgets/number-field";
import { Say } from "../../widgets/say";
import { fixed } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { shareField } from "../fields";
import { chosenLots, mixTrouble, sharesShown } from "../mix";
import { Choose, Figure, useDesk, useMark } from "./desk";

function Shares() {
  const { view, act } = useDesk();
  const { lots } = view.draft;
  return (
    <>
      {lots.slice(0, -1).map(({ lot, share }) => (
        <NumberField
          key={lot}
          fact={{ ...shareField, label: `Share of ${lot}` }}
          text={share}
          judged={view.figures.share(lot)}
          onText={(text) => {
            act({ do: "share", lot, text });
          }}
        />
      ))}
      <p className="soft">{lots.at(-1)?.lot} takes what is left.</p>
    </>
  );
}

/** Volume and methanol are counted for one kind of oil. */
function OneKind() {
  const { view } = useDesk();
  const kinds = chosenLots(view.draft, view.recorded).map((lot) => lot?.oil ?? "");
  if (kinds.every((kind) => kind === kinds[0])) return null;
  return (
    <Say tone="check">
      Different oils, all counted as {kinds[0] || "an oil not named"}: weigh them, do not measure
      them.
    </Say>
  );
}

function Mixed() {
  const { view } = useDesk();
  const inMark = useMark();
  const { mix } = view.working;
  if (mix === undefined) return null;
  if (isProblem(mix)) return <Say tone="check">{inMark(mixTrouble(mix))}</Say>;
  const shares = sharesShown(mix);
  const parts = mix.lots.map(({ recorded }, at) => `${shares[at] ?? ""} % ${lotMark(recorded)}`);
  return (
    <Say tone="know">
      {inMark(`${parts.join(" with ")} by mass: ${fixed(mix.ffa, 2)} % FFA.`)} Titrate it if you
      can.
    </Say>
  );
}

export function Mixing() {
  const { view } = useDesk();
  const { lots, picked } = view.draft;
  if (lots.length < 2) return null;
  const byTarget = lots.length === 2 && picked.mixedBy === "target";
  return (
    <section aria-label="The mix">
      <h3>The mix</h3>
      {lots.length === 2 ? <Choose field="mixedBy" /> : null}
      {byTarget ? <Figure field="target" /> : <Shares />}
      <Spoken>
        <Mixed />
        <OneKind />
      </Spoken>
    </section>
  );
}
