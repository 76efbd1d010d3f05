/** Result: the acid and how sure it is, what the doubt is made of, and the one step that helps most. */
import { isProblem } from "../../../core/problem/problem";
import { adviceInWords, bestChange } from "../../../core/uncertainty/advice";
import { AllTheSame } from "../../lots/all-the-same";
import { Say } from "../../widgets/say";
import { dotsOf, plotWords } from "../picture/ffa-dots";
import type { StepId } from "../titration";
import { lyePerLitre } from "../lye-per-litre";
import { fewSteps, largeBlank, unexpected } from "../nudges/readings";
import { sharesOf } from "../shares";
import { fixed, withDoubt } from "../../widgets/shown-number";
import type { Acid, Doubt } from "../working";
import type { Worth } from "../../../workbook/record/worth";
import { heldBack, isUsedAllTheSame, worthOf } from "../worth";
import { useDesk, useMark, Wants } from "./desk";
import { DotPlotView } from "./dot-plot";
import { DoubtBars } from "./doubt-bars";
import { Nudges } from "./nudges";

/** Grams of the very lye in the burette: a dose, so that readings which are apart do not show it unasked. */
function AcidPart() {
  const { view, act } = useDesk();
  const inMark = useMark();
  const lye = lyePerLitre(view);
  const held = heldBack(view);
  if (lye === undefined) return null;
  return (
    <>
      {held === "" ? (
        <p>Of this lye, for the acid: {inMark(fixed(lye, 2))} g per litre of oil.</p>
      ) : null}
      {held !== "" || isUsedAllTheSame(view) ? (
        <AllTheSame
          isUsed={held === ""}
          onUse={(isUsed) => {
            act({ do: "use-all-the-same", why: isUsed ? held : "" });
          }}
        />
      ) : null}
    </>
  );
}

function Headline({ acid, doubt }: { acid: Acid; doubt: Doubt | undefined }) {
  const { view } = useDesk();
  const inMark = useMark();
  const shown = doubt
    ? withDoubt(acid.ffa, doubt.halfWidth)
    : { value: fixed(acid.ffa, 2), halfWidth: undefined };
  const atMost = view.working.strength?.isAtMost ? "at most " : "";
  return (
    <div className="headline">
      <p className="headline-ffa">
        {atMost}
        <strong>{inMark(shown.value)}</strong>
        {shown.halfWidth === undefined ? null : ` ± ${inMark(shown.halfWidth)}`}{" "}
        <span className="together">% FFA</span>
      </p>
      <p className="soft">as oleic acid{doubt ? ", 95 % interval" : ""}</p>
      <dl>
        <dt>Acid value</dt>
        <dd>
          {atMost}
          {inMark(fixed(acid.acidValue, 2))} mg KOH/g
        </dd>
        <dt>Corrected titre</dt>
        <dd>{inMark(fixed(acid.correctedTitre, 3))} mL</dd>
      </dl>
    </div>
  );
}

/** @param isAdvised more oil is asked for already: no second piece of advice stands against it */
function MadeOf({ doubt, isAdvised }: { doubt: Doubt; isAdvised: boolean }) {
  const { view } = useDesk();
  const inMark = useMark();
  const shares = sharesOf(doubt.bench, view.draft.picked.sample === "by volume");
  if (shares.length === 0) return null;
  return (
    <section>
      <h3>What the ± is made of</h3>
      <DoubtBars shares={shares} />
      {isAdvised ? null : <Say tone="know">{inMark(adviceInWords(bestChange(doubt.bench)))}</Say>}
    </section>
  );
}

function Replicates({ acid, doubt }: { acid: Acid; doubt: Doubt | undefined }) {
  const { view } = useDesk();
  const dots = dotsOf(view);
  if (dots.length === 0) return null;
  const mean = acid.ffa.toNumber();
  return (
    <section>
      <h3>Each titre, % FFA</h3>
      <DotPlotView
        dots={dots}
        mean={mean}
        halfWidth={doubt?.halfWidth}
        words={plotWords(dots, mean, doubt?.halfWidth)}
      />
      <p className="legend soft">
        Dots: titres. Upright line: mean. {doubt ? "Bar above: the ± interval. " : ""}
        {dots.some(({ isOmitted }) => isOmitted) ? "Cross: left out." : ""}
      </p>
    </section>
  );
}

const tones = { Good: "know", Usable: "know", "Near zero": "know", "Not yet": "check" } as const;

function WorthView({ worth: { word, why } }: { worth: Worth }) {
  const inMark = useMark();
  return (
    <Say tone={tones[word]}>
      <strong>{word}.</strong> {inMark(why.join(" "))}
    </Say>
  );
}

export function ResultStep({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const { acid, doubt, strength } = view.working;
  if (acid === undefined || isProblem(acid)) {
    const wants = view.wants.filter((want) => want.for === "result");
    return <Wants title="For a result" wants={wants} onGo={onGo} isFirst />;
  }
  const worth = worthOf(view.working, view.draft);
  const moreOil = [...largeBlank(view), ...fewSteps(view)];
  const isAdvised = worth.word === "Near zero" || moreOil.length > 0;
  const forDoubt = doubt ? [] : view.wants.filter((want) => want.for === "doubt");
  return (
    <>
      <Headline acid={acid} doubt={doubt} />
      {strength?.isAtMost ? (
        <Say tone="check">
          Shown as if the lye were pure. The base charge still needs its assay.
        </Say>
      ) : null}
      <WorthView worth={worth} />
      <AcidPart />
      <Replicates acid={acid} doubt={doubt} />
      {doubt && worth.word !== "Not yet" ? <MadeOf doubt={doubt} isAdvised={isAdvised} /> : null}
      <Wants title="For the ±" wants={forDoubt} onGo={onGo} />
      <Nudges nudges={[...unexpected(view), ...moreOil]} />
    </>
  );
}
