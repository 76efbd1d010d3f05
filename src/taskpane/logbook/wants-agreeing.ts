/** What stands between a logbook and the steps after Check columns, in words. */
import { counted } from "../../sheet/counted";
import { openQuestions } from "../../adopt/recognising/questions";
import { type LogbookState, shownTable } from "./state";

/** On the button that agrees to the columns. */
export const agreeWords = (open: number): string =>
  open === 0 ? "These are right" : "Skip the questions";

/** Undefined where the columns that are shown are agreed to, or there is none. */
export function wantsAgreeing(state: LogbookState): string | undefined {
  const table = shownTable(state);
  if (!table || table.isAgreed) return undefined;
  const open = openQuestions(table.mapping, table.cells);
  const asked = open === 0 ? "" : `${counted(open, "question")} still open. `;
  return `${asked}The other steps begin once the columns are agreed: press “${agreeWords(open)}”.`;
}
