/** What is worth saying about the oil and its sample. */
import { halfSolidWords } from "../../../core/batch/half-solid";
import { isProblem } from "../../../core/problem/problem";
import { say } from "../../../core/problem/wording";
import { as, type Gram } from "../../../core/quantity/quantity";
import { exact } from "../../../core/exact/exact";
import {
  disagreement,
  hasOwnMasses,
  massByVolume,
  oilOf,
  suggestedSample,
  suggestedWords,
  usualAcid,
} from "../sample";
import { digits, fixed } from "../../widgets/shown-number";
import { temperatureWords } from "../../fields/fahrenheit";
import { know, check, type Nudge, type Seen } from "./nudge";

/** Masses typed: the one for all, or the own ones taken so far. */
function weighed({ draft, figures }: Seen): Gram[] {
  if (draft.picked.sample !== "weighed") return [];
  if (!hasOwnMasses(draft)) return [figures.in("g", "mass")].filter((mass) => mass !== undefined);
  return draft.titres.flatMap(({ mass }) => (mass === undefined ? [] : [as("g", exact(mass))]));
}

/** Enough oil for a titre of twenty steps. */
function sampleSize(seen: Seen): Nudge[] {
  const { figures, working } = seen;
  const step = figures.in("mL", "titreStep");
  if (step === undefined || working.strength === undefined) return [];
  const guess = figures.in("%", "expected");
  const suggested = suggestedSample(guess ?? usualAcid, working.strength, step);
  const least = suggested.mass;
  const density = massByVolumeDensity(seen);
  const asVolume = density === undefined ? "" : ` (${digits(least.div(density), 2)} mL)`;
  const wanted = `weigh ${suggestedWords(suggested, asVolume)}.`;
  const mass = seen.draft.picked.sample === "weighed" ? weighed(seen)[0] : massOrNothing(seen);
  if (guess !== undefined && mass?.lt(least)) {
    return [check("sample", `${digits(mass)} g is little for ${digits(guess)} % FFA: ${wanted}`)];
  }
  return [know("sample", `If the oil has about ${digits(guess ?? usualAcid)} % FFA, ${wanted}`)];
}

const massOrNothing = ({ draft, figures }: Seen): Gram | undefined => {
  const mass = massByVolume(draft, figures);
  return isProblem(mass) ? undefined : mass;
};

/** kg/L of the oil as measured, when it is measured. */
function massByVolumeDensity(seen: Seen) {
  const volume = seen.figures.value("volume");
  const mass = massOrNothing(seen);
  return seen.draft.picked.sample === "by volume" && volume ? mass?.div(volume) : undefined;
}

/** Weighed and measured as well: they must tell the same. */
function disagreeing(seen: Seen): Nudge[] {
  const { draft, figures } = seen;
  const byVolume = massByVolume(draft, figures);
  if (byVolume === undefined) return [];
  if (isProblem(byVolume)) return [check("solid", say(byVolume))];
  const volume = figures.value("volume");
  const oil = oilOf(draft, figures).name;
  for (const mass of weighed(seen)) {
    const percent = disagreement(mass, byVolume);
    if (percent !== undefined) {
      return [
        check(
          "disagree",
          `${mass.toString()} g was weighed, but ${volume?.toString() ?? ""} mL of ${oil} weighs ${digits(byVolume)} g: ${fixed(percent, 1)} % apart. Check both.`,
        ),
      ];
    }
  }
  return draft.picked.sample === "by volume"
    ? [know("weighs", `${volume?.toString() ?? ""} mL weighs ${digits(byVolume, 4)} g.`)]
    : [];
}

/** Between these oils and fats lie at 20 °C, kg/L (commonly cited; castor oil is heavier). */
const oilsLie = { from: "0.87", to: "0.94" } as const;

/** A density that no common oil has was mostly measured with air in the syringe. Weighed, nothing goes by it. */
function oddDensity({ draft, figures }: Seen): Nudge[] {
  const isGoneBy = draft.picked.sample === "by volume" || figures.value("volume") !== undefined;
  if (!isGoneBy) return [];
  const density = figures.in("kg/L", "density");
  if (density === undefined || (density.gte(oilsLie.from) && density.lte(oilsLie.to))) return [];
  const why = density.lt(oilsLie.from)
    ? "a light one usually means a bubble, or a drop left in the syringe. Measure it again."
    : "a heavy one usually means water, or a syringe wet outside. Measure it again, or is it castor oil?";
  return [
    check(
      "density",
      `${density.toString()} kg/L: oils lie between ${oilsLie.from} and ${oilsLie.to} at 20 °C, and ${why}`,
    ),
  ];
}

/** Cold fryer oil: neither its volume nor what came up with the syringe is the oil of the drum. */
function cold({ draft, figures }: Seen): Nudge[] {
  const warm = figures.in("C", "temperature");
  const words = halfSolidWords(
    oilOf(draft, figures),
    warm,
    warm && temperatureWords(draft.typed.temperature, warm),
  );
  return words === undefined ? [] : [check("cold", words)];
}

const byVolume = ({ draft }: Seen): Nudge[] =>
  draft.picked.sample === "by volume"
    ? [
        know(
          "syringe",
          "A syringe more than half full is good to about 5 %; 1 mL out of a 10 mL one to 16 % (ISO 7886-1, commonly cited). Weighing beats it.",
        ),
      ]
    : [];

const afterAcid = ({ draft }: Seen): Nudge[] =>
  draft.picked.stage === "after acid step"
    ? [
        know(
          "mineral acid",
          "Sulfuric acid left in the oil counts as well (ISO 660): the result is total acidity, which is what the dose needs; the FFA that is left is lower.",
        ),
      ]
    : [];

export const aboutOil = (seen: Seen): Nudge[] => [
  ...sampleSize(seen),
  ...disagreeing(seen),
  ...oddDensity(seen),
  ...cold(seen),
  ...byVolume(seen),
  ...afterAcid(seen),
];
