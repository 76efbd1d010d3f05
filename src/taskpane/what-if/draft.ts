/**
 * A what-if table under way, as typed and picked. Plain data, so that it can be kept and taken up
 * again. The acid values of recorded lots are not in it, since the workbook has them.
 */
import type { Base } from "../../core/reference/bases";
import { usual } from "../../core/reference/usual";
import type { Compared } from "../../workbook/what-if/question";
import type { UnitId } from "../fields/units";
import type { NumberFieldId } from "./fields";

export const stepIds = ["sizes", "compare", "table", "write"] as const;
export type StepId = (typeof stepIds)[number];

export const listIds = ["sizes", "acid", "assay", "charge"] as const;
export type ListId = (typeof listIds)[number];

export interface Picked {
  readonly unit: UnitId;
  readonly sizesBy: "list" | "steps";
  /** An oil by name; "" for one that is not in the list. */
  readonly oil: string;
  readonly by: Compared;
  /** Where the one acid value comes from, when something else is compared. */
  readonly acidFrom: "typed" | "lot";
  /** The one base, when something else is compared. */
  readonly base: Base["name"];
  readonly form: "table" | "one-formula";
  readonly place: "new-sheet" | "cell";
}

export interface Draft {
  readonly version: 1;
  readonly step: StepId;
  readonly typed: Readonly<Partial<Record<NumberFieldId, string>>>;
  /** Figures with spaces between them, as typed. */
  readonly lists: Readonly<Record<ListId, string>>;
  readonly picked: Picked;
  /** Lots to be compared, as text; `Titrations` may hold one as a number. */
  readonly lots: readonly string[];
  /** The one lot, when something else is compared. */
  readonly lot: string;
  /** Bases to be compared. */
  readonly bases: readonly Base["name"][];
}

export const newDraft = (): Draft => ({
  version: 1,
  step: "sizes",
  // said in its field, with the other limit people quote beside it
  typed: { limit: usual.limitFfa.toString() },
  lists: { sizes: "", acid: "", assay: "", charge: "" },
  picked: {
    unit: "l",
    sizesBy: "list",
    oil: "used cooking oil",
    by: "acid",
    acidFrom: "typed",
    base: "KOH",
    form: "table",
    place: "new-sheet",
  },
  lots: [],
  lot: "",
  bases: [],
});
