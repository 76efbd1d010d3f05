/** The titres as % FFA each, those left out as well, and the same in words. */
import { isProblem } from "../../../core/problem/problem";
import { ffaFromAcidValue } from "../../../core/titration/free-fatty-acid";
import { eachAcidValue } from "../../../core/titration/mean-acid-value";
import { as } from "../../../core/quantity/quantity";
import { exact } from "../../../core/exact/exact";
import type { Seen } from "../nudges/nudge";
import { type Dot, intervalOf } from "./dot-plot";
import { usedOf } from "../readings";
import { oneMass } from "../sample";
import { fixed } from "../../widgets/shown-number";

/** @returns nothing while a strength or a mass is missing */
export function dotsOf({ draft, figures, working }: Seen): Dot[] {
  const { strength, blanks } = working;
  const one = oneMass(draft, figures);
  if (strength === undefined) return [];
  return draft.titres.flatMap((reading, index) => {
    const own = reading.mass === undefined ? undefined : as("g", exact(reading.mass));
    const mass = (isProblem(one) ? undefined : one) ?? own;
    if (mass === undefined) return [];
    const values = eachAcidValue([[usedOf(reading), mass]], blanks, strength.molarity);
    const value = isProblem(values) ? undefined : values[0];
    const ffa = value ? ffaFromAcidValue(value) : undefined;
    if (ffa === undefined || isProblem(ffa)) return [];
    const isOmitted = reading.omitted !== undefined;
    return [{ name: `Titre ${index + 1}`, value: ffa.toNumber(), isOmitted }];
  });
}

/** "Titre 1 1.97, titre 2 2.01 % FFA; titre 3 omitted. Mean 1.99, from 1.85 to 2.13." */
export function plotWords(dots: readonly Dot[], mean: number, halfWidth: number | undefined) {
  const each = dots
    .map(
      ({ name, value, isOmitted }) => `${name} ${fixed(value, 2)}${isOmitted ? ", omitted" : ""}`,
    )
    .join("; ");
  const [from, to] = intervalOf(mean, halfWidth ?? 0);
  const interval =
    halfWidth === undefined ? "" : `, interval from ${fixed(from, 2)} to ${fixed(to, 2)}`;
  return `${each}; mean ${fixed(mean, 2)}${interval}, all in % FFA.`;
}
