/** The card as a sheet to print, on request: shown first, then made as a sheet of its own. */
import { makeCard, planCard } from "../../../workbook/planning/plan-card";
import { PlannedPress } from "../../planned/planned-press";
import type { Change } from "../../planned/use-planned";
import { type AmountShown, unitsOf } from "../card";
import { useCard } from "./desk";

export function PrintCard({ amounts }: { amounts: readonly AmountShown[] }) {
  const { host, batch, draft, inMark } = useCard();
  const units = unitsOf(batch, draft.units);
  const asked = { row: batch.row, batch: batch.batch, units };
  const figures = amounts.map(({ what, figure }) => [what, figure]);
  const change: Change = {
    key: JSON.stringify([asked, figures]),
    plan: () => planCard(host, asked),
    write: (confirmed, pause) => makeCard(host, asked, confirmed, pause),
  };
  return (
    <PlannedPress
      change={change}
      command="Make this sheet"
      busyWords="Making the sheet."
      inMark={inMark}
      undoTakes="takes it back"
      afterwards={<p>Print it from the spreadsheet: the card, and all cautions behind it.</p>}
    />
  );
}
