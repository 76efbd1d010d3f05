/**
 * What stands among the columns of a titration, and what its figures say there: a base is the burette's, what
 * was weighed is the sample, a figure that is the same all along was not read from a burette.
 */
import { type Candidate, type Context, sameWords } from "../context";
import { median } from "../numbers-of-column";
import type { RoleId } from "../roles";
import { says } from "../words/speaks-for";
import { isOfBases } from "./said-by-cells";

const leastRows = 4;
/** Nobody makes a batch of less. */
const mostTitrated = 60;

/** It is first of all one of these. */
const isOne =
  (roles: readonly RoleId[]) =>
  (each: Candidate | undefined): boolean => {
    const most = Math.max(0.6, ...(each?.scores ?? []).map(({ score }) => score));
    return each?.scores.some(({ role, score }) => roles.includes(role) && score >= most) === true;
  };

const titrates = isOne(["titre", "blank", "indicator", "molarity", "strength"]);
const isSample = isOne(["sampleMass", "sampleVolume"]);
const doses = isOne(["oilAmount", "methanol", "assay", "catalyst", "baseCharge", "litresMade"]);

const besides = (candidate: Candidate, all: readonly Candidate[]) => {
  const at = all.indexOf(candidate);
  return { left: all[at - 1], right: all[at + 1] };
};

/** KOH between who titrated and the indicator is what is in the burette. */
const baseOfBurette: Context = (candidate, all) => {
  if (!isOfBases(candidate)) return [];
  const { left, right } = besides(candidate, all);
  const isAmong = titrates(right) || (isSample(right) && !doses(left));
  if (!isAmong || doses(left)) return [];
  return [
    ["titrantBase", 0.35, "it stands before what is titrated"],
    ["base", -0.35, ""],
  ];
};

/** "Probe", 5 in each row: readings differ. */
const steadyIsNoTitre: Context = ({ facts }) =>
  facts.filled >= leastRows && facts.numbers.length === facts.filled && facts.different === 1
    ? [["titre", -0.5, ""]]
    : [];

/** A few grams of oil where nothing is dosed. */
const weighedToTitrate: Context = (candidate, all) => {
  const { parts, facts } = candidate;
  const others = all.filter((each) => each !== candidate);
  if (parts.unit !== undefined || !says(parts.text, "mass") || median(facts.numbers) > mostTitrated)
    return [];
  return others.some(isOne(["titre"])) && !others.some(doses)
    ? [
        ["oilMass", -0.4, ""],
        ["sampleMass", 0.1, ""],
      ]
    : [];
};

/** "Weighed in", just before the titres, where nothing else is the sample. */
const weighedIsSample: Context = (candidate, all) => {
  const { parts, facts } = candidate;
  const others = all.filter((each) => each !== candidate);
  if (!says(parts.text, "weighed") || says(parts.text, "sample")) return [];
  if (says(parts.text, "oil")) return [["weighed", -0.4, ""]];
  const { right } = besides(candidate, all);
  const isBefore = isOne(["titre", "blank"])(right) || right?.parts.unit === "mL";
  const isLittle = parts.unit === "g" && median(facts.numbers) <= mostTitrated;
  return isBefore && isLittle && !others.some(isSample)
    ? [
        ["sampleMass", 0.15, "it stands before the titres"],
        ["weighed", -0.4, ""],
      ]
    : [["sampleMass", -0.5, ""]];
};

/** "First go" without a second is a rough one. */
const firstOfNone: Context = (candidate, all) =>
  candidate.parts.number === 1 &&
  says(candidate.heading, "rough") &&
  !all.some((each) => sameWords(candidate, each))
    ? [["titre", -1, ""]]
    : [];

export const inTitration: readonly Context[] = [
  baseOfBurette,
  steadyIsNoTitre,
  weighedToTitrate,
  weighedIsSample,
  firstOfNone,
];
