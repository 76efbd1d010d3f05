/** The strength of the titrant, from whatever is known of it. */
import { exact, hundred, ten } from "../../core/exact/exact";
import { type Exact } from "../../core/exact/exact";
import {
  as,
  type GramPerLitre,
  type MolePerLitre,
  type Percent,
  quantity,
} from "../../core/quantity/quantity";
import { type Base, bases } from "../../core/reference/bases";
import { limits, misses } from "../../core/reference/limits";
import { molarityByWeighing, molarityFromPhthalate } from "../../core/titration/titrant";
import type { Draft } from "./draft";
import type { StrengthWay } from "./picks";
import type { NumberFieldId } from "./fields";
import { asInCell } from "../fields/number-figures";
import type { Figures } from "./figures";

export interface Strength {
  readonly molarity: MolePerLitre;
  /** The lye's assay is not known: the strength is this at most, and so is the acid it measures. */
  readonly isAtMost: boolean;
  /** Lye as weighed in a litre; undefined when it was not made by weighing. */
  readonly gramsPerLitre: GramPerLitre | undefined;
  readonly setBy: string;
  /** ± limits of the strength. */
  readonly percent: Percent | undefined;
}

/** What is asked for, by the way the strength is known. */
export const strengthFields: Record<StrengthWay, readonly NumberFieldId[]> = {
  molarity: ["molarity"],
  normality: ["normality"],
  gramsPerLitre: ["gramsPerLitre"],
  percent: ["percent"],
  weighed: ["lyeMass", "lyeVolume"],
  phthalate: ["phthalateMass", "phthalateTitre", "phthalatePurity"],
  certified: ["certified"],
  kept: ["kept"],
};

const oneLitre = quantity("L", 1);
const pure = quantity("%", 100);

export const baseOf = (draft: Draft): Base => {
  const base = bases.find((each) => each.name === draft.picked.base);
  if (base === undefined) throw new RangeError(`no base is called ${draft.picked.base}`);
  return base;
};

/** Made by weighing lye, so that its assay matters. */
export const needsAssay = (way: StrengthWay): boolean =>
  way === "gramsPerLitre" || way === "percent" || way === "weighed";

/** How it is known, in the words of the tables. */
export const setByWay: Record<Exclude<StrengthWay, "kept">, string> = {
  molarity: "label",
  normality: "label",
  gramsPerLitre: "weighing",
  percent: "weighing",
  weighed: "weighing",
  phthalate: "KHP",
  certified: "certificate",
};

/** In the words of the tables. What comes from Titrants is known as it says there. */
const setByOf = ({ picked: { way }, words }: Draft): string =>
  way === "kept" ? words.howKnown : setByWay[way];

/** Lye as weighed, g in a litre. */
function weighedPerLitre(draft: Draft, figures: Figures): GramPerLitre | undefined {
  switch (draft.picked.way) {
    case "gramsPerLitre":
      return figures.in("g/L", "gramsPerLitre");
    case "percent": {
      const percent = figures.value("percent");
      return percent && as("g/L", percent.times(ten));
    }
    case "weighed": {
      const mass = figures.value("lyeMass");
      const volume = figures.value("lyeVolume");
      return mass && volume && as("g/L", mass.div(volume));
    }
    default:
      return undefined;
  }
}

const assayOf = (draft: Draft, figures: Figures): Percent | undefined =>
  draft.picked.assay === "same-lye" ? pure : figures.in("%", "assay");

function unrounded(draft: Draft, figures: Figures): Exact | undefined {
  const { way } = draft.picked;
  switch (way) {
    case "molarity":
    case "normality":
    case "certified":
    case "kept":
      return figures.value(way);
    case "phthalate": {
      const mass = figures.in("g", "phthalateMass");
      const titre = figures.in("mL", "phthalateTitre");
      const isPurityWrong = figures.judged("phthalatePurity").kind === "wrong";
      if (mass === undefined || titre === undefined || isPurityWrong) return undefined;
      return molarityFromPhthalate(mass, titre, figures.in("%", "phthalatePurity") ?? pure);
    }
    default: {
      const perLitre = weighedPerLitre(draft, figures);
      const assay = assayOf(draft, figures);
      if (perLitre === undefined || assay === undefined) return undefined;
      return molarityByWeighing(as("g", perLitre), oneLitre, baseOf(draft), assay);
    }
  }
}

const oneTenth = exact("0.1");

/**
 * 0.1 mol/L of KOH holds 5.6 times what 0.1 % holds, and both are called "point one": a bare 0.1 is
 * asked about before it is used.
 */
export function isTenthAsked(draft: Draft, figures: Figures): boolean {
  const { way } = draft.picked;
  if (way !== "molarity" && way !== "percent") return false;
  return draft.picked.oneTenth !== way && figures.value(way)?.eq(oneTenth) === true;
}

/** @returns undefined while something is missing or wrong, or comes to a strength no titrant has */
export function strengthOf(draft: Draft, figures: Figures): Strength | undefined {
  const molarity = isTenthAsked(draft, figures) ? undefined : unrounded(draft, figures);
  if (molarity === undefined || misses(molarity, limits.molarity) !== undefined) return undefined;
  return {
    molarity: asInCell("mol/L", molarity),
    isAtMost: needsAssay(draft.picked.way) && draft.picked.assay === "same-lye",
    gramsPerLitre: weighedPerLitre(draft, figures),
    setBy: setByOf(draft),
    percent: figures.in("%", "strengthPercent"),
  };
}

/** A strength that comes out of range although each figure is in range: 200 g in 0.1 L. */
export function strengthOutOfRange(draft: Draft, figures: Figures): Exact | undefined {
  const molarity = unrounded(draft, figures);
  return molarity && misses(molarity, limits.molarity) !== undefined ? molarity : undefined;
}

/** The same strength said in the other ways: g/L of pure base, and % w/v. */
export const asPureGrams = (molarity: MolePerLitre, base: Base): GramPerLitre =>
  as("g/L", molarity.times(base.molarMass));

/** mol/L of a number of grams of pure base in a litre. */
export const asMolarity = (grams: GramPerLitre, base: Base): MolePerLitre =>
  molarityByWeighing(as("g", grams), oneLitre, base, pure);

/** A base charge, pure, as it must be weighed at an assay. */
export const asWeighedAt = (grams: Exact, assayPercent: Exact): Exact =>
  grams.times(hundred).div(assayPercent);
