/** Twins of the titration functions. */
import { acidValueDefinition } from "../../core/reference/compounds";
import { limits } from "../../core/reference/limits";
import { blanksOf, isAbove } from "./shared/blanks";
import { listOf, meanOf, smallestOf } from "./shared/list";
import { atMost, figure } from "./shared/text";
import type { Work } from "./shared/work";

/** mg of KOH per mmol: the definition of the acid value. */
export const definition = figure(acidValueDefinition);

/** No oil has a larger acid value. */
export const isPlausible = (acidValue: string): string => atMost(acidValue, limits.acidValue.to);

const corrected: Work = (reading) => {
  const titres = listOf(reading, "titres");
  const blank = blanksOf(reading);
  reading.allow(isAbove(smallestOf(titres), blank.mean));
  return reading.answer(`${meanOf(titres)}-${blank.mean}`);
};

const acidValue: Work = (reading) => {
  const titre = reading.figure("correctedTitre");
  const molarity = reading.figure("molarity");
  const mass = reading.figure("sampleMass");
  const value = `${definition}*${molarity}*${titre}/${mass}`;
  reading.allow(isPlausible(value));
  return reading.answer(value);
};

export const titration = { CORRECTED: corrected, ACIDVALUE: acidValue };
