/** Oil: which lot, what has been done to it, and how much of it is in the glass. */
import { useState } from "react";
import { OilPick } from "../../fields/picks";
import { Choice } from "../../widgets/choice";
import { PickList } from "../../widgets/pick-list";
import { WordField } from "../../widgets/word-field";
import { stages } from "../names";
import { aboutOil } from "../nudges/oil";
import { hasOwnMasses } from "../sample";
import { Figure, useDesk } from "./desk";
import { Nudges } from "./nudges";

function Weighed() {
  const { view, act } = useDesk();
  // once open it stays so: it must not shut on who takes a figure out again
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Choice
        label="Mass of the samples"
        value={view.draft.picked.masses}
        options={[
          ["one", "One for all"],
          ["own", "Each its own"],
        ]}
        onPick={(masses) => {
          act({ do: "pick", picked: { masses } });
        }}
      />
      <div className="side-by-side">
        {hasOwnMasses(view.draft) ? null : <Figure field="mass" />}
        <Figure field="massStep" />
      </div>
      <details
        className="more"
        open={isOpen || (view.draft.typed.volume ?? "") !== ""}
        onToggle={({ currentTarget }) => {
          setOpen(currentTarget.open);
        }}
      >
        <summary>Measured as well?</summary>
        <Measured />
      </details>
    </>
  );
}

function Measured() {
  return (
    <div className="side-by-side">
      <Figure field="volume" />
      <Figure field="temperature" />
      <Figure field="density" />
    </div>
  );
}

export function OilStep() {
  const { view, act } = useDesk();
  const { picked, words } = view.draft;
  return (
    <>
      <WordField
        label="Lot"
        value={words.lot}
        hint="As it is marked on the drum."
        onText={(lot) => {
          act({ do: "write", words: { lot } });
        }}
      />
      <PickList
        label="Stage"
        value={picked.stage}
        options={stages}
        onPick={(stage) => {
          act({ do: "pick", picked: { stage } });
        }}
      />
      <OilPick
        value={picked.oil}
        onPick={(oil) => {
          act({ do: "pick", picked: { oil } });
        }}
      />
      <Choice
        label="The sample is"
        value={picked.sample}
        options={[
          ["weighed", "Weighed"],
          ["by volume", "Measured"],
        ]}
        onPick={(sample) => {
          act({ do: "pick", picked: { sample } });
        }}
      />
      {picked.sample === "weighed" ? (
        <Weighed />
      ) : (
        <>
          <Measured />
          <Figure field="samplePercent" />
        </>
      )}
      <Figure field="expected" />
      <Nudges nudges={aboutOil(view)} />
    </>
  );
}
