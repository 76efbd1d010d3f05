/** One held figure against what it should be: right within its digits, carried over, or a mistake. */
import type { RoleId } from "../../recognising/roles";
import type { Checking } from "./checking";
import { addedWrongly, explained, shownByFormula, smallMistake } from "./explained";
import { explainedTwice } from "./explained-twice";
import type { Match } from "./match";
import type { Slip } from "./slips";
import { distance, straightTries, tries, type Try, ways } from "./tries";
import { fromNothing } from "../arithmetic/row-arithmetic";
import { expectedFigure, type Written } from "../arithmetic/expected-figure";

export type Verdict =
  /** There is nothing to work it out from. */
  | { readonly kind: "not-checked" }
  | { readonly kind: "right"; readonly written: Written }
  /** Wrong, and rightly worked out from a figure of the row that is wrong itself. */
  | { readonly kind: "carried"; readonly written: Written; readonly should: number }
  | {
      readonly kind: "wrong";
      readonly written: Written;
      readonly should: number;
      readonly slip: Slip | undefined;
      /** Other causes that give it to its digits as well. */
      readonly orElse: readonly Slip[];
      /** The search for two mistakes at once ended with its budget. */
      readonly isCutShort?: true;
    };

/** Other constants of the trade (56.11, 282.5, 0.92) and rounding along the way stay within this. */
const conventional = 0.005;
/** Published coefficients for the lye per % FFA differ by up to 2 % (facts of their sources). */
const conventionalAcidDose = 0.02;

/** How far conventions alone may take a figure: in a dose, its acid part further than the rest. */
function leeway({ role, readings, unit }: Checking): number {
  if (role === "acidDose") return conventionalAcidDose;
  if (role !== "catalyst" && role !== "catalystRate") return conventional;
  const acid = expectedFigure("acidDose", unit, "weighed", readings, {}, fromNothing);
  const all = expectedFigure(role, unit, "weighed", readings, {}, fromNothing);
  return acid && all ? conventional + conventionalAcidDose * (acid / all) : conventional;
}

const isAcid = (role: RoleId): boolean => role === "acidValue" || role === "ffa";

/** Less than as if the lye were pure, by what an assay that nobody wrote down may be. */
const leastAssay = 0.75;
const mayBeByAssay = (
  { role, held, readings, acidOfPureLye }: Checking,
  asIfPure: number,
): boolean =>
  readings.assayCancels &&
  isAcid(role) &&
  !acidOfPureLye &&
  held.value < asIfPure &&
  held.value >= asIfPure * leastAssay;

type Wrong = Extract<Verdict, { kind: "wrong" }>;

/** Wrong, though not by anything done here: it was copied from where it is wrong. */
export const carriedFrom = ({ written, should }: Wrong): Verdict => ({
  kind: "carried",
  written,
  should,
});

const wrong = (written: Written, should: number, match: Match | undefined): Wrong => ({
  kind: "wrong",
  written: match?.written ?? written,
  should,
  slip: match?.slip,
  orElse: match?.orElse ?? [],
});

/**
 * Without a search for mistakes: whatever conventions allow is right. A formula that shows a mistake
 * is no convention, however little the mistake does.
 */
export function judged(c: Checking): Verdict {
  const { held } = c;
  const straight = straightTries(c);
  const [first] = straight;
  if (!first) return { kind: "not-checked" };
  const right = straight.find((each) => distance(held, each) <= 1);
  if (right) return { kind: "right", written: right.written };
  const near = leeway(c);
  const should = (): number => c.core() ?? first.value;
  const follows = ways(c).flatMap((way) => tries(c, way, c.origins()));
  const followed = follows.find((each) => distance(held, each) <= 1);
  const isNear = (each: Try): boolean => distance(held, each, near) <= 1;
  if (followed && straight.some(isNear)) return { kind: "right", written: followed.written };
  if (followed) return { kind: "carried", written: followed.written, should: should() };
  if (mayBeByAssay(c, first.value)) return { kind: "not-checked" };
  // In a logbook that is kept to its digits only other constants are an excuse.
  const isOff = c.isExact && straight.every((each) => distance(held, each, conventional) > 1);
  const proven = shownByFormula(c) ?? (isOff ? smallMistake(c) : undefined);
  if (proven) return wrong(first.written, should(), proven);
  const conventionally = straight.find(isNear);
  if (conventionally) return { kind: "right", written: conventionally.written };
  const nearly = follows.find(isNear);
  if (nearly) return { kind: "carried", written: nearly.written, should: should() };
  return wrong(first.written, should(), undefined);
}

/** What was judged to be wrong, with the mistake that gives it, or the two, where one is known. */
export function searched(c: Checking, verdict: Verdict): Verdict {
  if (verdict.kind !== "wrong" || verdict.slip) return verdict;
  const one = explained(c) ?? addedWrongly(c);
  if (one) return wrong(verdict.written, verdict.should, one);
  // so many pairs are possible that one of them fits any cup
  if (c.held.isCoarse) return verdict;
  const { match, isCutShort } = explainedTwice(c);
  const found = wrong(verdict.written, verdict.should, match);
  return isCutShort ? { ...found, isCutShort } : found;
}
