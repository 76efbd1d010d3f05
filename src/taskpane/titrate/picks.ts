/** What is picked in a titration, each said once: label, words, what holds at first, what stays. */
import { neutralisedWord } from "../../core/titration/neutralised";
import { basePick, oilPick } from "../fields/picks";
import { pick, type PickedOf } from "../fields/pick-facts";
import { stages } from "../../core/titration/stages";
import { type EndPoint, endPoints } from "../../core/reference/end-points";

const isKept = { isKept: true } as const;

const secondsWords = Object.fromEntries(
  endPoints.map(({ seconds }) => [String(seconds), `${seconds} s`]),
) as Record<`${EndPoint["seconds"]}`, string>;

export const picks = {
  base: basePick(isKept),
  /** How the strength of the titrant is known. */
  way: pick(
    "list",
    "How do you know its strength?",
    {
      molarity: "mol/L, from its label",
      normality: "Normality, from its label",
      gramsPerLitre: "g/L of lye",
      percent: "% w/v of lye",
      weighed: "Lye weighed and made up",
      phthalate: "Checked against KHP",
      certified: "Certificate",
      kept: "Kept in Titrants",
    },
    "molarity",
    isKept,
  ),
  /** The lye's assay, or: it is the batch's own lye and nobody knows. */
  assay: pick(
    "buttons",
    "The assay is",
    { known: "Known", "same-lye": "Same lye as the batch, assay unknown" },
    "known",
    isKept,
  ),
  /** The answer to "0.1 mol/L or 0.1 %?"; "" when not answered. */
  oneTenth: pick("buttons", "", { molarity: "mol/L", percent: "%" }, "", isKept),
  stage: pick("list", "Stage", stages, "as received"),
  oil: oilPick({ isKept: true, isFree: true }),
  sample: pick(
    "buttons",
    "The sample is",
    { weighed: "Weighed", "by volume": "Measured" },
    "weighed",
    isKept,
  ),
  masses: pick(
    "buttons",
    "Mass of the samples",
    { one: "Same mass", own: "Weighed each time" },
    "one",
    isKept,
  ),
  blank: pick(
    "buttons",
    "The blank",
    { titrated: "Titrated", [neutralisedWord]: "Solvent neutralised" },
    "",
  ),
  reading: pick(
    "buttons",
    "You type",
    { used: "One volume", "start and end": "Start and end" },
    "used",
    isKept,
  ),
  /** Is the scatter of the titrations on record used? Asked once. */
  record: pick(
    "buttons",
    "Your usual scatter",
    { use: "Use it", without: "Do without" },
    "",
    isKept,
  ),
  indicator: pick(
    "list",
    "Indicator",
    {
      phenolphthalein: "phenolphthalein",
      thymolphthalein: "thymolphthalein",
      "alkali blue": "alkali blue",
      turmeric: "turmeric",
      "pH meter": "pH meter",
    },
    "phenolphthalein",
    { isKept: true, isFree: true },
  ),
  /** How long the colour has to stay, in seconds. */
  seconds: pick("buttons", "", secondsWords, ""),
} as const;

export type Picked = PickedOf<typeof picks>;
export type StrengthWay = Picked["way"];
