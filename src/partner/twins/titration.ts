/** Twins of the titration functions. */
import { hundred } from "../../core/exact/exact";
import { limits } from "../../core/reference/limits";
import { blanksOf, isAbove } from "./shared/blanks";
import { definition, tenfold } from "./shared/doses";
import { listOf, meanOf } from "./shared/list";
import { replicatesOf } from "./shared/pairs";
import type { Reading } from "./shared/reading";
import { atMost, figure, when } from "./shared/text";
import type { Work } from "./shared/work";
import { fattyAcidMass } from "./shared/words";

/** No oil has a larger acid value. */
export const isPlausible = (acidValue: string): string => atMost(acidValue, limits.acidValue.to);

export const isPlausiblePercent = (percent: string): string => atMost(percent, figure(hundred));

const corrected: Work = (reading) => {
  const titres = listOf(reading, "titres");
  const blank = blanksOf(reading);
  reading.allow(isAbove(titres.least, blank.mean));
  const titre = meanOf(titres);
  return reading.answer(blank.mean === "0" ? titre : `${titre}-${blank.mean}`);
};

const acidValue: Work = (reading) => {
  const titre = reading.figure("correctedTitre");
  const molarity = reading.figure("molarity");
  const mass = reading.figure("sampleMass");
  const value = `${definition}*${molarity}*${titre}/${mass}`;
  reading.allow(isPlausible(value));
  return reading.answer(value);
};

const ffaPercent: Work = (reading) => {
  const titre = reading.figure("correctedTitre");
  const molarity = reading.figure("molarity");
  const mass = reading.figure("sampleMass");
  const value = `${molarity}*${titre}*${fattyAcidMass(reading)}/(10*${mass})`;
  reading.allow(isPlausiblePercent(value));
  return reading.answer(value);
};

const ffaFromAcidValue: Work = (reading) => {
  const value = `${reading.figure("acidValue")}*${fattyAcidMass(reading)}/${tenfold}`;
  reading.allow(isPlausiblePercent(value));
  return reading.answer(value);
};

/** Acid value of a percentage, mg KOH/g, behind its guard. */
export function fromPercent(reading: Reading): string {
  const value = `${tenfold}*${reading.figure("ffaPercent")}/${fattyAcidMass(reading)}`;
  reading.allow(isPlausible(value));
  return value;
}

const acidValueFromFfa: Work = (reading) => reading.answer(fromPercent(reading));

/** Mean acid value of the replicates, mg KOH/g. */
export function meanAcidValueOf(reading: Reading): string {
  const molarity = reading.figure("molarity");
  const net = replicatesOf(reading)?.net.text ?? "1";
  const value = `${definition}*${molarity}*AVERAGE(${net})`;
  reading.allow(isPlausible(value));
  return value;
}

const meanAcidValue: Work = (reading) => reading.answer(meanAcidValueOf(reading));

const eachAcidValue: Work = (reading) => {
  const molarity = reading.figure("molarity");
  const net = replicatesOf(reading)?.net;
  const { rows = 1, columns = 1 } = reading.call.argument("titres") ?? {};
  const factor = `${definition}*${molarity}`;
  if (net) reading.allow(isPlausible(`${factor}*MAX(${net.text})`));
  const value = (place: number): string => {
    const ratio = net?.cell(place, 0) ?? "0";
    return when(`${ratio}=""`, '""', `${factor}*${ratio}`);
  };
  return reading.table(
    Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => value(row * columns + column)),
    ),
  );
};

const perLitre: Work = (reading) => {
  const titre = reading.figure("correctedTitre");
  const strength = reading.figure("titrantStrength");
  return reading.answer(`${titre}*${strength}/${reading.figure("sampleVolume")}`);
};

export const titration = {
  CORRECTED: corrected,
  ACIDVALUE: acidValue,
  FFAPERCENT: ffaPercent,
  FFAFROMACIDVALUE: ffaFromAcidValue,
  ACIDVALUEFROMFFA: acidValueFromFfa,
  MEANACIDVALUE: meanAcidValue,
  EACHACIDVALUE: eachAcidValue,
  PERLITRE: perLitre,
};
