/** Twins of the batch functions. */
import { ten } from "../../core/exact/exact";
import { acidValueDefinition } from "../../core/reference/compounds";
import { oleic } from "../../core/reference/fatty-acids";
import type { Reading } from "./shared/reading";
import { atMost, figure } from "./shared/text";
import { baseMass, baseOf } from "./shared/words";
import type { Work } from "./shared/work";
import { definition } from "./titration";

/** % FFA as oleic, which limits and bands compare. */
export const ffaAsOleic = (acidValue: string): string =>
  `${acidValue}*${figure(oleic.reportedMass)}/${figure(ten.times(acidValueDefinition))}`;

/** Above the limit no dose is given. */
export function withinLimit(reading: Reading, acidValue: string): void {
  reading.allow(atMost(ffaAsOleic(acidValue), reading.figure("limitFfaPercent")));
}

/** Grams of lye as weighed, acid and reaction together. */
export const dose = (
  oil: string,
  acidValue: string,
  base: string,
  assay: string,
  charge: string,
): string => `(${oil}*${acidValue}/${definition}*${base}+10*${oil}*${charge})*100/${assay}`;

const catalyst: Work = (reading) => {
  const oil = reading.figure("oilMass");
  const value = reading.figure("acidValue");
  const base = baseMass(baseOf(reading));
  const assay = reading.figure("assayPercent");
  const charge = reading.figure("baseCharge");
  withinLimit(reading, value);
  return reading.answer(dose(oil, value, base, assay, charge));
};

export const batch = { CATALYST: catalyst };
