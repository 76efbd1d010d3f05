/** Oil: which lot, what has been done to it, and how much of it is in the glass. */
import { useState } from "react";
import { aboutOil } from "../nudges/oil";
import { hasOwnMasses } from "../sample";
import { Choose, Figure, useDesk, Words } from "./desk";
import { Nudges } from "./nudges";

function Weighed() {
  const { view } = useDesk();
  // once open it stays so: it must not shut on who takes a figure out again
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Choose field="masses" />
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
  const { view } = useDesk();
  const { picked } = view.draft;
  return (
    <>
      <Words field="lot" />
      <Choose field="stage" />
      <Choose field="oil" />
      <Choose field="sample" />
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
