/** The form of My bench: a field or a list for each setting, under a few headings. */
import { taskDesk, type TaskDesk } from "../stepped/task-desk";
import { bench, benchGroups, isFigure } from "./bench";
import type { View } from "./view-of";

interface Desk extends TaskDesk<typeof bench> {
  readonly view: View;
}

const { DeskProvider, Figure, Choose } = taskDesk<typeof bench, Desk>(bench);

export { DeskProvider };

export function BenchForm() {
  return benchGroups.map(({ name, ids }) => (
    <fieldset key={name} className="bench-group">
      <legend>{name}</legend>
      {ids.map((id) =>
        isFigure(id) ? <Figure key={id} field={id} /> : <Choose key={id} field={id} />,
      )}
    </fieldset>
  ));
}
