/** The arithmetic of a batch, as formula text: what several twins share. */
import { allAcid } from "../../../core/batch/methanol";
import { hundred, ten, thousand } from "../../../core/exact/exact";
import { acidValueDefinition, methanol, oleicAcid } from "../../../core/reference/compounds";
import { oleic } from "../../../core/reference/fatty-acids";
import { methanolDensity } from "../../../core/reference/liquids";
import type { Reading } from "./reading";
import { atMost, figure } from "./text";

export const definition = figure(acidValueDefinition);
export const tenfold = figure(ten.times(acidValueDefinition));

/** % FFA as oleic, which limits and bands compare. */
export const ffaAsOleic = (acidValue: string): string =>
  `${acidValue}*${figure(oleic.reportedMass)}/${tenfold}`;

/** Above the limit no dose is given. */
export function withinLimit(reading: Reading, acidValue: string): void {
  reading.allow(atMost(ffaAsOleic(acidValue), reading.figure("limitFfaPercent")));
}

/** Grams of pure base for the acid: as many moles as there are of acid. */
export const pureForAcid = (oil: string, acidValue: string, base: string): string =>
  `${oil}*${acidValue}/${definition}*${base}`;

/** Grams of pure base for the reaction. */
export const pureForReaction = (oil: string, charge: string): string => `10*${oil}*${charge}`;

/** Grams of lye as weighed. */
export const asWeighed = (pure: string, assay: string): string =>
  `${pure}*${figure(hundred)}/${assay}`;

/** Grams of lye as weighed, acid and reaction together. */
export const dose = (
  oil: string,
  acidValue: string,
  base: string,
  assay: string,
  charge: string,
): string =>
  asWeighed(`(${pureForAcid(oil, acidValue, base)}+${pureForReaction(oil, charge)})`, assay);

/** The part of the oil that is triglyceride; an acid value that leaves none is refused. */
export function triglycerideShare(reading: Reading, acidValue: string): string {
  reading.allow(`${acidValue}<${figure(allAcid)}`);
  return `(1-${acidValue}/${definition}*${figure(oleicAcid.div(thousand))})`;
}

/** Kilograms of methanol for a molar ratio. */
export const methanolMass = (
  oil: string,
  share: string,
  ratio: string,
  triglyceride: string,
): string => `${oil}*${share}*${ratio}*${figure(methanol)}/${triglyceride}`;

/** Litres at 20 C. */
export const methanolLitres = (kilograms: string): string =>
  `${kilograms}/${figure(methanolDensity)}`;
