/** The two arguments that bring in the record: how the same hand scattered before. */
import { type Outcome, problem } from "../core/problem/problem";
import type { Fraction, Millilitre } from "../core/quantity/quantity";
import type { UsualScatter } from "../core/record/pooled-scatter";
import { limits } from "../core/reference/limits";
import { optionalNumber, optionalWhole } from "./arguments";

const notUsed = "the record is not used";

export const usualArguments = {
  usualScatter: optionalNumber(
    limits.standardDeviation,
    notUsed,
    undefined,
    "Standard deviation of one titration from your record, mL: see USUALSCATTER.",
  ),
  usualFreedom: optionalWhole(
    limits.usualFreedom,
    notUsed,
    "Degrees of freedom behind it: see USUALFREEDOM.",
  ),
};

export interface GivenUsual {
  readonly usualScatter: Millilitre | undefined;
  readonly usualFreedom: Fraction | undefined;
}

/** Both or neither: a scatter without its degrees of freedom says nothing of how well it is known. */
export function usualOf(given: GivenUsual): Outcome<UsualScatter | undefined> {
  const { usualScatter: scatter, usualFreedom: freedom } = given;
  if (scatter !== undefined && freedom !== undefined) {
    return { scatter: scatter.toNumber(), freedom: freedom.toNumber() };
  }
  if (scatter === undefined && freedom === undefined) return undefined;
  const [present, missing] =
    freedom === undefined ? ["usualScatter", "usualFreedom"] : ["usualFreedom", "usualScatter"];
  return problem({ code: "usual-alone", given: present, missing });
}
