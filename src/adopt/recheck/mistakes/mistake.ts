/**
 * A mistake that is known by its arithmetic: a way of working that gives another figure than the right
 * way does from the same readings.
 */
import type { RoleId } from "../../recognising/roles";
import type { FormulaFacts } from "../reading/formula-facts";
import type { Readings } from "../reading/readings";
import type { Ways } from "../arithmetic/ways";

export interface Mistake<Id extends string = string> {
  readonly id: Id;
  /** In a few words, for lists and filters. */
  readonly name: string;
  /** What went wrong and why it matters, in one sentence. */
  readonly sentence: string;
  /** Ways in which a figure of a row may have been worked out with it; none where it cannot be made. */
  readonly ways: (role: RoleId, r: Readings) => readonly Ways[];
  /** Does a formula's own make-up show it? */
  readonly shows?: (facts: FormulaFacts) => boolean;
  /** Figures whose formula may show it before any figure is wrong. */
  readonly sleepsIn?: readonly RoleId[];
  /** It may do so little that it hides in what other constants do. */
  readonly isSmall?: true;
  /** Looked for by itself, and not as one of two that act together; in doses alone, where so many pairs
   * are possible that one of them fits anything. */
  readonly isAlone?: true | "in doses";
  /** The figure is one that stands elsewhere, to its last digit. */
  readonly isCopy?: true;
}

export const mistake = <const Id extends string>(of: Mistake<Id>): Mistake<Id> => of;

/** Found by other means than by working the row out. */
export const noWays = (): readonly Ways[] => [];

const whole: readonly RoleId[] = ["catalystRate", "catalyst"];
const acidDoses: readonly RoleId[] = ["acidDose", ...whole];
const acidFigures: readonly RoleId[] = ["acidValue", "ffa"];

export const isWhole = (role: RoleId): boolean => whole.includes(role);
/** The lye for the acid is in it. */
export const isOfAcid = (role: RoleId): boolean => acidDoses.includes(role);
export const isDose = (role: RoleId): boolean => role === "reactionDose" || isOfAcid(role);
/** Worked out from the titres, by way of the sample. */
export const isOfSample = (role: RoleId): boolean => acidFigures.includes(role) || isOfAcid(role);
export const isOfTitre = (role: RoleId): boolean => role === "correctedTitre" || isOfSample(role);
export const isOfOil = (role: RoleId): boolean => role === "oilMass" || isDose(role);

/** Does one of the figures lie within 0.6 % of one that is looked for? */
export const nearly = (numbers: readonly number[], ...wanted: number[]): boolean =>
  numbers.some((number) => wanted.some((each) => Math.abs(number - each) <= each * 0.006));
