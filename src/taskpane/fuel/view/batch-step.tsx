/** Which batch the fuel is of, how much, and whether it was washed. */
import { batchWords, nameOf } from "../../card/card";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { named, ofRow } from "../of-batch";
import { Choose, Figure, useDesk, Words } from "./desk";

function Recorded() {
  const { view, change, batches } = useDesk();
  const rows = (batches?.rows ?? []).filter((row) => nameOf(row) !== "");
  if (rows.length === 0) return null;
  const options = rows.map((row) => [nameOf(row), batchWords(row)] as const);
  const told = (name: string) =>
    ofRow(
      rows.find((row) => nameOf(row) === name),
      view.mark,
    );
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
    </>
  );
}
