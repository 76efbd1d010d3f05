/** Lye: what it is, how pure, whether the titrant was made of it, and the base charge. */
import { BasePick } from "../../fields/picks";
import { Choice } from "../../widgets/choice";
import { Say } from "../../widgets/say";
import { WordField } from "../../widgets/word-field";
import { Spoken } from "../../widgets/spoken";
import { chosenLots } from "../mix";
import { Charge } from "./charge";
import { Figure, useDesk } from "./desk";

function AboutTitrant() {
  const { view } = useDesk();
  const { titrantLye } = view.draft.picked;
  const chosen = chosenLots(view.draft, view.recorded);
  const asIfPure = chosen.some((lot) => lot?.isAsIfPure);
  if (titrantLye === "same") {
    return (
      <Say tone="know">
        With the same lye the assay cancels for the acid part only: what was used in the burette is
        what the vessel needs. The base charge still stands on the assay.
        {asIfPure ? " The titration took the lye as pure; its acid is put right here." : ""}
      </Say>
    );
  }
  return asIfPure ? (
    <Say tone="mind">
      A lot was titrated with lye of unknown assay, taken as pure: its acid value is an upper bound.
      If that was this lye, say so above.
    </Say>
  ) : null;
}

export function LyeStep() {
  const { view, act } = useDesk();
  const { picked, words } = view.draft;
  return (
    <>
      <WordField
        label="Batch"
        value={words.batch}
        hint="Its number in your logbook."
        onText={(batch) => {
          act({ do: "write", words: { batch } });
        }}
      />
      <BasePick
        value={picked.base}
        onPick={(base) => {
          act({ do: "pick", picked: { base } });
        }}
      />
      <div className="side-by-side">
        <WordField
          label="Lye lot"
          value={words.lyeLot}
          hint="From its label."
          onText={(lyeLot) => {
            act({ do: "write", words: { lyeLot } });
          }}
        />
        <Figure field="assay" />
      </div>
      {picked.base.endsWith("CH3") ? (
        <Say tone="know">
          Under 50 % a methoxide is a solution: the rest of it is counted as methanol, and so much
          less is added.
        </Say>
      ) : null}
      <Choice
        label="The titrant was made of"
        value={picked.titrantLye}
        options={[
          ["other", "Other lye, or not known"],
          ["same", "This same lot of lye"],
        ]}
        onPick={(titrantLye) => {
          act({ do: "pick", picked: { titrantLye } });
        }}
      />
      <Spoken>
        <AboutTitrant />
      </Spoken>
      <h3>For the reaction</h3>
      <Charge />
    </>
  );
}
