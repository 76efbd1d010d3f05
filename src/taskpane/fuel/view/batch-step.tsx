/** Which batch the fuel is of, how much, and whether it was washed. */
import { baseNamed } from "../../../core/reference/bases";
import { batchWords, nameOf } from "../../card/card";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { Choose, Figure, useDesk, Words } from "./desk";

function Recorded() {
  const { view, act, batches } = useDesk();
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
        act({ do: "write", words: { batch: name } });
        const base = baseNamed(rows.find((row) => nameOf(row) === name)?.base ?? "");
        if (base) act({ do: "pick", picked: { base: base.name } });
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
