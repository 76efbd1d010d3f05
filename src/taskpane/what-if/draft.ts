/**
 * A what-if table under way, as typed and picked. Plain data, so that it can be kept and taken up
 * again. The acid values of recorded lots are not in it, since the workbook has them.
 */
import type { Base } from "../../core/reference/bases";
import { usual } from "../../core/reference/defaults";
import { type Entered, firstEntered } from "../stepped/entered";
import type { ListId } from "./fields";
import { whatIf } from "./what-if";

export interface Draft extends Entered<typeof whatIf> {
  readonly version: 1;
  /** Figures with spaces between them, as typed. */
  readonly lists: Readonly<Record<ListId, string>>;
  /** Lots to be compared, as text; `Titrations` may hold one as a number. */
  readonly lots: readonly string[];
  /** The one lot, when something else is compared. */
  readonly lot: string;
  /** Why lots are not worth a dose yet that are used for all that, in the words of their rows. */
  readonly usedAllTheSame: readonly string[];
  /** Bases to be compared. */
  readonly bases: readonly Base["name"][];
}

export const newDraft = (): Draft => ({
  version: 1,
  ...firstEntered(whatIf),
  // said in its field, with the other limit people quote beside it
  typed: { limit: usual.limitFfa.toString() },
  lists: { sizes: "", acid: "", ffa: "", assay: "", charge: "" },
  lots: [],
  lot: "",
  usedAllTheSame: [],
  bases: [],
});
