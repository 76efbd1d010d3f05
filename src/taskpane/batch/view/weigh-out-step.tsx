/** The weigh-out, its doubt and the route; above the allowed acid, no dose. */
import { useRef } from "react";
import { isProblem } from "../../../core/problem/problem";
import { AllTheSame } from "../../lots/all-the-same";
import { limitWords } from "../../fields/limit-words";
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { Together } from "../../widgets/together";
import { doubtText } from "../../widgets/shown-number";
import { acidValueWords, isHeldBack, lotWorths, notYet } from "../acid-worth";
import type { StepId } from "../batch";
import { routeOf } from "../route-of";
import { forWeighOut } from "../wants";
import { expectedOf, waterInAll, weighOutOf } from "../weigh-out";
import { ToTask } from "../../to-task";
import { AcidStep } from "./acid-step";
import { useDesk, useMark, Wants } from "./desk";
import { FinishedFuel } from "./finished-fuel";
import { Former } from "./former";
import { Limit } from "./limit";
import { Lines } from "./lines";
import { OilWater } from "./oil-water";
import { TooMuch } from "./too-much";
import { Warmth } from "./warmth";
import { WeightsIn } from "./weights-in";

/** The acid and what it is worth. */
function Acid() {
  const { view } = useDesk();
  const inMark = useMark();
  const { mix } = view.working;
  if (mix === undefined || isProblem(mix)) return null;
  return (
    <>
      <p>
        <Together>
          {inMark(
            `Acid: ${doubtText(mix.ffa, mix.halfWidth, 2)} % FFA, acid value ${acidValueWords(mix)}.`,
          )}
        </Together>
      </p>
      {lotWorths(view).map(({ words, isNotYet }) => (
        <Say key={words} tone={isNotYet ? "check" : "know"}>
          {inMark(words)}
        </Say>
      ))}
    </>
  );
}

/** The acid, and which way this oil can go. */
function Route() {
  const { view } = useDesk();
  const inMark = useMark();
  const sentence = routeOf(view);
  const water = waterInAll(view);
  if (sentence === undefined) return null;
  return (
    <>
      {notYet(view) === "" ? <Acid /> : null}
      <Say tone="know">{inMark(sentence)}</Say>
      {water === undefined ? null : <Say tone="know">{water}</Say>}
    </>
  );
}

/** Shown wherever a lot is not worth a dose yet: used or not, and the other way round at a press. */
function AsAnswered() {
  const { view, act } = useDesk();
  const why = notYet(view);
  if (why === "") return null;
  return (
    <AllTheSame
      isUsed={!isHeldBack(view)}
      onUse={(isUsed) => {
        act({ do: "use-all-the-same", why: isUsed ? why : "" });
      }}
    />
  );
}

/** Says that there is no dose; and once a higher limit was typed, that there is one. */
function Standing({ wasRefused }: { wasRefused: boolean }) {
  const { view } = useDesk();
  const { batch } = view.working;
  const inMark = useMark();
  const isHeld = batch !== undefined && !isProblem(batch) && isHeldBack(view);
  return (
    <Spoken>
      {isHeld ? <Say tone="check">No dose yet: titrate again.</Say> : null}
      {isProblem(batch) ? <Say tone="check">No dose: {inMark(limitWords(batch))}</Say> : null}
      {wasRefused && batch !== undefined && !isProblem(batch) ? (
        <Say tone="know">Under the limit you typed there is a dose: it stands below.</Say>
      ) : null}
    </Spoken>
  );
}

function NoDose() {
  return (
    <>
      <OilWater />
      <Route />
      <AcidStep />
    </>
  );
}

/** Stays where it is while it is typed into, whatever the figure on the way allows. */
function HigherLimit() {
  const { view } = useDesk();
  const { mix } = view.working;
  // one that gives no dose either is no help; it stays the same while a limit is typed
  const ffa = mix === undefined || isProblem(mix) ? undefined : mix.ffa;
  return (
    <section aria-label="Go on above the limit?">
      <h3>Go on above the limit?</h3>
      <p>
        To go on, type a higher limit. Or go back to Oil and mix this lot with one of less acid.
      </p>
      <Limit isOffered={(limit) => ffa === undefined || ffa.lte(limit)} />
    </section>
  );
}

function Dose() {
  const { view, act } = useDesk();
  return (
    <>
      <OilWater />
      <TooMuch />
      <Lines lines={weighOutOf(view)} />
      <WeightsIn />
      <ToTask
        task="what-if"
        about=""
        words="What if"
        before={() => {
          act({ do: "go", step: view.draft.step });
        }}
      />
      <Route />
      <AcidStep />
      <details className="more">
        <summary>What goes in and comes out</summary>
        <dl className="cells">
          {expectedOf(view).map(([what, figure]) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{figure}</dd>
            </div>
          ))}
        </dl>
      </details>
      <Warmth />
      <FinishedFuel />
      <Former />
    </>
  );
}

/** Readings that are apart give no dose and no route, until somebody says that they are to be used for all that. */
function Doubtful() {
  const { view } = useDesk();
  return (
    <>
      <Acid />
      <AsAnswered />
      <p className="soft">The row’s note will say so.</p>
      {isHeldBack(view) ? null : <Dose />}
    </>
  );
}

function Top({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const { batch } = view.working;
  const wants = forWeighOut(view.wants);
  if (wants.length > 0 || batch === undefined) {
    return <Wants title="For a weigh-out" wants={wants} onGo={onGo} />;
  }
  if (isProblem(batch)) return <NoDose />;
  return notYet(view) === "" ? <Dose /> : <Doubtful />;
}

export function WeighOutStep({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const { batch } = view.working;
  const wasRefused = useRef(false);
  if (isProblem(batch)) wasRefused.current = true;
  return (
    <>
      <Standing wasRefused={wasRefused.current} />
      <Top onGo={onGo} />
      {wasRefused.current ? <HigherLimit /> : null}
    </>
  );
}
