/** Twins of the functions about a batch, but for PRETREATMENT and BATCH. */
import { soapMolarMass } from "../../core/batch/soap";
import { oilOf, triglycerideText } from "./shared/density";
import {
  asWeighed,
  definition,
  dose,
  methanolLitres,
  methanolMass,
  pureForAcid,
  triglycerideShare,
  withinLimit,
} from "./shared/doses";
import { pairsOf } from "./shared/pairs";
import type { Reading } from "./shared/reading";
import { routeText } from "./shared/route-text";
import type { Work } from "./shared/work";
import { baseMass, baseOf } from "./shared/words";
import { fromPercent, meanAcidValueOf } from "./titration";

const neutraliser: Work = (reading) => {
  const oil = reading.figure("oilMass");
  const value = reading.figure("acidValue");
  const base = baseMass(baseOf(reading));
  return reading.answer(asWeighed(pureForAcid(oil, value, base), reading.figure("assayPercent")));
};

/** CATALYST for an acid value, which may be worked out itself. */
function doseFor(reading: Reading, acidValue: string): ReturnType<Work> {
  const oil = reading.figure("oilMass");
  const base = baseMass(baseOf(reading));
  const assay = reading.figure("assayPercent");
  const charge = reading.figure("baseCharge");
  withinLimit(reading, acidValue);
  return reading.answer(dose(oil, acidValue, base, assay, charge));
}

const catalyst: Work = (reading) => doseFor(reading, reading.figure("acidValue"));

const acidValueLabel = "acid value, mg KOH/g";

const catalystFromFfa: Work = (reading) =>
  doseFor(reading, reading.call.helper(acidValueLabel, reading.guarded(fromPercent(reading))));

const fromReadings: Work = (reading) => {
  const value = meanAcidValueOf(reading);
  return doseFor(reading, reading.call.helper(acidValueLabel, reading.guarded(value)));
};

const methanolVolume: Work = (reading) => {
  const oil = reading.figure("oilMass");
  const ratio = reading.figure("molarRatio");
  const share = triglycerideShare(reading, reading.figure("acidValue", "0"));
  const mass = methanolMass(oil, share, ratio, triglycerideText(oilOf(reading)));
  return reading.answer(methanolLitres(mass));
};

/** Grams of soap for each mole of acid. */
export const soapMass = (reading: Reading): string =>
  baseOf(reading).pick("soap of the base's metal, g/mol", soapMolarMass);

/** Kilograms of soap. */
export const soapText = (oil: string, acidValue: string, perMole: string): string =>
  `${oil}*${acidValue}/${definition}*${perMole}/1000`;

const soap: Work = (reading) => {
  const oil = reading.figure("oilMass");
  const value = reading.figure("acidValue");
  return reading.answer(soapText(oil, value, soapMass(reading)));
};

const blend: Work = (reading) => {
  const a = reading.figure("acidValueA");
  const b = reading.figure("acidValueB");
  const target = reading.figure("targetAcidValue");
  reading.allow(`${a}<>${b}`, `${target}>=MIN(${a},${b})`, `${target}<=MAX(${a},${b})`);
  return reading.answer(`(${target}-${b})/(${a}-${b})`);
};

const blendedAcidValue: Work = (reading) => {
  const lots = pairsOf(
    reading,
    ["acidValues", "masses"],
    ["acid value of the lot, mg KOH/g", "mass of the lot, kg"],
  );
  const [values, masses] = [lots?.first.text ?? "0", lots?.second.text ?? "1"];
  return reading.answer(`SUMPRODUCT(${values},${masses})/SUM(${masses})`);
};

const route: Work = (reading) => {
  const value = reading.figure("acidValue");
  const water = reading.figure("waterPercent", '""');
  return reading.answer(routeText(reading, value, water, reading.figure("limitFfaPercent")));
};

export const batch = {
  ROUTE: route,
  NEUTRALISER: neutraliser,
  CATALYST: catalyst,
  CATALYSTFROMFFA: catalystFromFfa,
  DOSE: fromReadings,
  METHANOL: methanolVolume,
  SOAP: soap,
  BLEND: blend,
  BLENDEDACIDVALUE: blendedAcidValue,
};
