/** What is picked for a what-if table, each said once: label, words, what holds at first. */
import type { Compared } from "../../workbook/what-if/question";
import { basePick, oilPick, unitPick } from "../fields/picks";
import { pick, type PickedOf } from "../fields/pick-facts";

const compared: Record<Compared, string> = {
  acid: "Acid values",
  assay: "Assays",
  charge: "Base charges",
  base: "Bases",
};

export const picks = {
  unit: unitPick(),
  sizesBy: pick("buttons", "Batch sizes as", { list: "A list", steps: "Even steps" }, "list"),
  oil: oilPick(),
  by: pick("buttons", "Compare", compared, "acid"),
  /** Where the one acid value comes from, when something else is compared. */
  acidFrom: pick("buttons", "Acid value", { typed: "Typed", lot: "Of a recorded lot" }, "typed"),
  /** What acid is typed in. */
  acidIn: pick("buttons", "Acid given as", { value: "Acid value", ffa: "% FFA" }, "value"),
  /** The one base, when something else is compared. */
  base: basePick(),
  form: pick(
    "buttons",
    "As",
    { table: "A table of formulas", "one-formula": "One formula that spills" },
    "table",
  ),
  place: pick(
    "buttons",
    "Where",
    { "new-sheet": "A new sheet", cell: "The selected cell" },
    "new-sheet",
  ),
} as const;

export type Picked = PickedOf<typeof picks>;
