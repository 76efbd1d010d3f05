/** The arguments OUTLIERS, VERDICT and SPREAD share, and the replicates they describe. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import { lessBlank, meanBlank } from "../../core/titration/corrected-titre";
import type { Millilitre, Percent } from "../../core/quantity/quantity";
import { limits } from "../../core/reference/limits";
import { usual } from "../../core/reference/defaults";
import { replicateSet, type ReplicateSet } from "../../core/replicates/outlier-test";
import { list, type List, optionalList, optionalNumber, usualNumber } from "../arguments";
import { blanks } from "../blanks";
import { isOneCell, pairLists } from "../pairing";
import { type GivenUsual, usualArguments, usualOf } from "../usual-arguments";

const readings = list(
  limits.reading,
  "reading",
  "The replicate readings, mL. Empty cells are ignored.",
);

const step = optionalNumber(
  limits.step,
  "the coarsest usual step that fits all readings as typed",
  undefined,
  "The smallest difference you read to, mL: the graduation, or half of it if you estimate.",
);

export const confidencePercent = usualNumber(
  limits.confidence,
  usual.confidence,
  "Confidence in percent: 95, not 0.95.",
);

const ownMasses = optionalList(
  limits.sampleMass,
  "one sample mass served all",
  "Grams of oil in each titration, in the same order: unequal samples then compare.",
);

export const replicateArguments = {
  readings,
  step,
  confidencePercent,
  sampleMasses: ownMasses,
  blanks: blanks("optional"),
  ...usualArguments,
};

export interface Given extends GivenUsual {
  readonly readings: List<"mL">;
  readonly step: Millilitre | undefined;
  readonly confidencePercent: Percent;
  readonly sampleMasses: List<"g"> | undefined;
  readonly blanks: readonly Millilitre[];
}

/** One mass for all changes nothing, so only a range of masses is paired with the readings. */
export function setOf(given: Given): Outcome<ReplicateSet> {
  const { readings: list, step: read, confidencePercent: confidence, sampleMasses } = given;
  const usual = usualOf(given);
  if (isProblem(usual)) return usual;
  if (sampleMasses === undefined || isOneCell(sampleMasses)) {
    return replicateSet(list.filled, read, confidence, { usual, blanks: given.blanks });
  }
  const pairs = pairLists(
    list,
    sampleMasses,
    {
      first: "reading",
      second: "sample mass",
      advice: "each needs the other, or leave sampleMasses out",
    },
    ["readings", "sampleMasses"],
  );
  if (isProblem(pairs)) return pairs;
  const blank = meanBlank(given.blanks);
  for (const reading of list.filled) {
    const above = lessBlank(reading, blank);
    if (isProblem(above)) return above;
  }
  const samples = pairs.filter((pair) => pair !== null);
  return replicateSet(list.filled, read, confidence, { samples, blanks: given.blanks, usual });
}
