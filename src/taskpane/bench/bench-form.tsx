/** The form of My bench: a field or a list for each setting, under a few headings. */
import { baseNames } from "../../core/reference/bases";
import type { BenchId } from "../../workbook/tables/bench";
import { taskDesk, type TaskDesk } from "../stepped/task-desk";
import { bench, benchGroups, isChoice, isFigure, isText, lyeIds } from "./bench";
import type { View } from "./view-of";

interface Desk extends TaskDesk<typeof bench> {
  readonly view: View;
}

const { DeskProvider, Figure, Choose, Words, useDesk } = taskDesk<typeof bench, Desk>(bench);

export { DeskProvider };

function Setting({ id }: { id: BenchId }) {
  if (isFigure(id)) return <Figure field={id} />;
  return isChoice(id) ? <Choose field={id} /> : isText(id) ? <Words field={id} /> : null;
}

/** The lye that batches are made with, and the others, each with a lot, an assay and a charge of its own. */
function Lyes() {
  const { base } = useDesk().view.draft.picked;
  const others = baseNames.filter((name) => name !== base);
  return (
    <>
      {baseNames
        .filter((name) => name === base)
        .flatMap(lyeIds)
        .map((id) => (
          <Setting key={id} id={id} />
        ))}
      <details className="more" open={base === "" ? true : undefined}>
        <summary>{base === "" ? "Lyes" : "Other lyes"}</summary>
        {others.flatMap(lyeIds).map((id) => (
          <Setting key={id} id={id} />
        ))}
      </details>
    </>
  );
}

export function BenchForm() {
  return benchGroups.map(({ name, ids }) => (
    <fieldset key={name} className="bench-group">
      <legend>{name}</legend>
      {ids.map((id) => (
        <Setting key={id} id={id} />
      ))}
      {name === "Lye" ? <Lyes /> : null}
    </fieldset>
  ));
}
