/** Which batch the fuel is of, how much, and whether it was washed. */
import { batchWords, nameOf } from "../../card/card";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { measuredIn, named, ofRow } from "../of-batch";
import { type MadeIn, picks } from "../picks";
import { Choose, Figure, useDesk, Words } from "./desk";

/** What the row of a batch says, the fuel measured in this. */
function useTold() {
  const { view, batches } = useDesk();
  return (name: string, madeIn: MadeIn = view.draft.picked.madeIn) =>
    ofRow(
      batches?.rows.find((row) => nameOf(row) === name && name !== ""),
      view.mark,
      madeIn,
    );
}

function Recorded() {
  const { view, change, batches } = useDesk();
  const told = useTold();
  const rows = (batches?.rows ?? []).filter((row) => nameOf(row) !== "");
  if (rows.length === 0) return null;
  const options = rows.map((row) => [nameOf(row), batchWords(row)] as const);
  const typed = view.draft.words.batch.trim();
  const value = options.some(([name]) => name === typed) ? typed : "";
  return (
    <PickList
      label="Recorded batch"
      value={value}
      options={[["", "Not one of these"], ...options]}
      onPick={(name) => {
        change((draft) => named(draft, name, told(name), told(typed)));
      }}
    />
  );
}

function MadeInWhat() {
  const { view, change } = useDesk();
  const told = useTold();
  const { draft } = view;
  return (
    <PickList
      label={picks.madeIn.label}
      value={draft.picked.madeIn}
      options={picks.madeIn.choices}
      onPick={(madeIn) => {
        const batch = draft.words.batch.trim();
        change((now) => measuredIn(now, madeIn, (unit) => told(batch, unit)));
      }}
    />
  );
}

export function BatchStep() {
  const { view } = useDesk();
  const { washed } = view.draft.picked;
  return (
    <>
      <Recorded />
      <Words field="batch" />
      <Choose field="base" />
      <Choose field="washed" />
      {washed === "yes" ? <Figure field="washes" /> : null}
      {washed === "no" ? (
        <Say tone="check">
          Unwashed fuel holds soap, base and methanol: its acid value judges nothing. Its soap says
          how often to wash.
        </Say>
      ) : null}
      <Figure field="litres" />
      <MadeInWhat />
    </>
  );
}
