/** The water that was found, and what the scale it was weighed on can tell. */
import { type Exact, exact } from "../../core/exact/exact";
import { lossOnHeating, waterFromGas } from "../../core/fuel/water-measured";
import { isProblem, type Problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { NumberFigures } from "../fields/number-figures";
import { digits } from "../widgets/shown-number";
import type { WaterBy, WaterField } from "./fields";

type Figures = Pick<NumberFigures<WaterField>, "in">;

/** % of the mass, as a cell will hold it; undefined while it is not known. */
export function waterFound(by: WaterBy, figures: Figures): Exact | Problem | undefined {
  if (by === "typed") return figures.in("%", "water");
  if (by === "weighed") {
    const [dish, wet, dry] = (["dish", "wetMass", "dryMass"] as const).map((field) =>
      figures.in("g", field),
    );
    return dish && wet && dry ? held(lossOnHeating(dish, wet, dry)) : undefined;
  }
  const rise = figures.in("kPa", "pressureRise");
  const space = figures.in("L", "gasSpace");
  const celsius = figures.in("C", "gasTemperature");
  const mass = figures.in("g", "gasMass");
  return rise && space && celsius && mass
    ? held(waterFromGas(rise, space, celsius, mass))
    : undefined;
}

const held = (found: Exact | Problem): Exact | Problem =>
  isProblem(found) ? found : exact(found.toNumber());

/** What a problem of these weighings is called at the bench. */
const benchWords: readonly (readonly [RegExp, string])[] = [
  [/\bmassBefore\b/g, "Dish and sample before"],
  [/\bmassAfter\b/g, "Dish and sample dried"],
];

export const waterTrouble = (found: Problem): string =>
  benchWords.reduce((words, [name, called]) => words.replace(name, called), say(found));

/** ± of a loss on drying, % of the mass: two weighings to a step, rectangular (JCGM 100, F.2.2.1). */
export function dryingDoubt(figures: Figures): number | undefined {
  const step = figures.in("g", "dryingStep");
  const [dish, wet] = [figures.in("g", "dish"), figures.in("g", "wetMass")];
  if (!step || !dish || !wet || wet.lte(dish)) return undefined;
  return (1.96 * 100 * step.toNumber()) / Math.sqrt(6) / wet.minus(dish).toNumber();
}

/** The ± is so large that a figure at half the limit could be over it. */
export const isTooCoarse = (doubt: number, limit: Exact): boolean => doubt * 2 > limit.toNumber();

/** What that ± leaves of a judgement, in a sentence. */
export function scaleSays(doubt: number, limit: Exact): string {
  const [half, most] = [digits(doubt, 2), limit.toString()];
  return isTooCoarse(doubt, limit)
    ? `The scale alone makes that ± ${half} %: it cannot judge ${most} %. Take more, or a finer scale.`
    : `The scale alone makes that ± ${half} %: enough to judge ${most} %.`;
}
