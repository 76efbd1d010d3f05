/** What is picked for a batch, each said once: label, words, what holds at first, what stays. */
import { basePick, unitPick } from "../fields/picks";
import { waterPick } from "../water/fields";
import { pick, type PickedOf } from "../fields/pick-facts";

const isKept = { isKept: true } as const;

export const picks = {
  unit: unitPick(isKept),
  /** How two lots are mixed. */
  mixedBy: pick(
    "buttons",
    "Mixed",
    { shares: "By shares you type", target: "To a target" },
    "shares",
  ),
  /** What "Acid at most" of a mix from store is in. */
  mostAcidIn: pick(
    "buttons",
    "Acid is given as",
    { ffa: "% FFA", "acid value": "mg KOH/g" },
    "ffa",
    isKept,
  ),
  mixRule: pick(
    "buttons",
    "Use up first",
    { "least acid first": "Least acid", "oldest first": "The oldest" },
    "least acid first",
    isKept,
  ),
  waterBy: waterPick,
  base: basePick(isKept),
  titrantLye: pick(
    "buttons",
    "The titrant was made of",
    { other: "Other lye, or not known", same: "This same lot of lye" },
    "other",
  ),
  chargeUnit: pick(
    "buttons",
    "The base charge is given in",
    { "%": "% of the oil’s mass", "g/L": "g per litre" },
    "%",
    isKept,
  ),
  /** Never taken for granted. */
  chargeIs: pick(
    "buttons",
    "The base charge is",
    { pure: "Pure base", "as weighed": "Lye as weighed" },
    "",
    { ...isKept, isNeeded: true },
  ),
  methanolBy: pick(
    "buttons",
    "Methanol is given as",
    { ratio: "Molar ratio", volume: "% by volume" },
    "ratio",
    isKept,
  ),
  /** Until somebody picks, as the oil is measured: see `inPounds`. */
  pounds: pick("buttons", "Weights in", { no: "g and kg", yes: "lb and oz as well" }, "", isKept),
} as const;

export type Picked = PickedOf<typeof picks>;

/** Who measures in gallons or pounds weighs in pounds too, unless they picked otherwise. */
export const inPounds = ({ pounds, unit }: Picked): "no" | "yes" =>
  pounds !== "" ? pounds : ["lb", "us_gal", "uk_gal"].includes(unit) ? "yes" : "no";
