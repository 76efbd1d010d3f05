/** Lots chosen from what is in store, for an amount of oil and the acid it may have. */
import { Button } from "@fluentui/react-components";
import type { Exact } from "../../../core/exact/exact";
import { withMark } from "../../widgets/typed-number";
import { Say } from "../../widgets/say";
import { fixed } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { amount, amountTo } from "../amount-text";
import { fromStore, leftOut, ruleWords, type StoreFound } from "../in-store";
import { unitOf } from "../working";
import { Choose, Figure, useDesk, useMark } from "./desk";
import { HowMuch } from "./how-much";

type Mixed = Extract<StoreFound, { readonly kind: "mix" | "too sour" }>;

/** A drum is read to a tenth of a litre at best; a trial of one litre is not. */
const placesFor = (whole: Exact | undefined): number => (whole?.lt(10) === true ? 3 : 1);

function Lines({ lines }: Mixed) {
  const { view } = useDesk();
  const unit = unitOf(view.draft).shown;
  const places = placesFor(view.figures.value("amount"));
  const isAll = (after: Exact): boolean => after.toDecimalPlaces(places).isZero();
  return (
    <ul className="amounts">
      {lines.map(({ lot, taken, after }) => (
        <li key={lot}>
          <span className="amount-what">{lot}</span>
          <span className="amount-figure">
            {amountTo(taken, places, view.mark)} {unit}
          </span>
          <span className="soft full">
            {isAll(after)
              ? "all of it"
              : `${amountTo(after, places, view.mark)} ${unit} left after it`}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** What it comes to, in a sentence. */
function Words({ found }: { found: StoreFound }) {
  const { view } = useDesk();
  const { draft, figures, mark } = view;
  const unit = unitOf(draft).shown;
  if (found.kind === "too little")
    return (
      <Say tone="check">
        Only {amount(found.left, mark)} {unit} are in store.
      </Say>
    );
  if (found.kind === "too many")
    return <Say tone="check">That takes {found.count} lots: more than a batch here can hold.</Say>;
  const both = (isFfa: boolean): string =>
    isFfa ? `${fixed(found.ffa, 2)} % FFA` : `acid value ${fixed(found.acidValue, 2)} mg KOH/g`;
  const acid = withMark(both(draft.picked.mostAcidIn === "ffa"), mark);
  return found.kind === "too sour" ? (
    <Say tone="check">
      {`No mix of ${withMark(figures.value("amount")?.toString() ?? "", mark)} ${unit} in store has so little acid. The nearest: ${acid}.`}
    </Say>
  ) : (
    <Say tone="know">{`The mix: ${acid}.`}</Say>
  );
}

function Found({ found }: { found: StoreFound }) {
  const { view, act } = useDesk();
  const isMix = found.kind === "mix" || found.kind === "too sour";
  const isUsed = isMix && JSON.stringify(found.chosen) === JSON.stringify(view.draft.lots);
  return (
    <>
      <Spoken>
        <Words found={found} />
        {isUsed ? <p>Its lots are ticked above.</p> : null}
      </Spoken>
      {isMix ? (
        <>
          <Lines {...found} />
          <Button
            size="large"
            className="wide"
            onClick={() => {
              act({ do: "mix", lots: found.chosen });
            }}
          >
            {found.kind === "mix" ? "Use these lots" : "Use the nearest"}
          </Button>
        </>
      ) : null}
    </>
  );
}

export function FromStore() {
  const { view, store } = useDesk();
  const inMark = useMark();
  const out = leftOut(view, store);
  const found = fromStore(view, store);
  return (
    <section aria-label="From store">
      <HowMuch />
      <Figure field="mostAcid" />
      <Choose field="mostAcidIn" />
      <Choose field="mixRule" />
      <p className="soft">{ruleWords[view.draft.picked.mixRule]}</p>
      {found === undefined ? null : <Found found={found} />}
      {out.length === 0 ? null : <p className="soft">{inMark(`Left out: ${out.join("; ")}.`)}</p>}
    </section>
  );
}
