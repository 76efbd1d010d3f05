/** Twins of the functions that turn amounts into each other. */
import { exact } from "../../core/exact/exact";
import type { AmountUnit } from "../../core/quantity/units";
import { methanol } from "../../core/reference/compounds";
import { limits } from "../../core/reference/limits";
import { methanolDensity } from "../../core/reference/liquids";
import { densityText, oilOf, triglycerideText } from "./shared/density";
import type { Reading } from "./shared/reading";
import { figure, when } from "./shared/text";
import { wordOf } from "./shared/word";
import type { Work } from "./shared/work";
import { fattyAcidMass } from "./shared/words";

/** Kilograms of oil in one of the unit: a volume counts by its density. */
export function kilogramsInOne(reading: Reading, temperature?: string): string {
  const unit = wordOf<AmountUnit>(reading, "unit");
  const factor = unit.pick("one of the unit, in L or kg", (each) => each.factor);
  const isVolume = unit.pick("1 for a unit of volume", (each) =>
    exact(each.measures === "volume" ? 1 : 0),
  );
  const density = densityText(reading, oilOf(reading), temperature, isVolume);
  if (isVolume === "0") return factor;
  return isVolume === "1"
    ? `${factor}*${density}`
    : `${factor}*${when(`${isVolume}=1`, density, "1")}`;
}

const oilMass: Work = (reading) => {
  const amount = reading.figure("amount");
  const mass = `${amount}*${kilogramsInOne(reading, "temperature")}`;
  reading.allow(`${mass}<=${limits.oilMass.to}`);
  return reading.answer(mass);
};

const sampleGrams: Work = (reading) => {
  const volume = reading.figure("volume");
  return reading.answer(`${volume}*${densityText(reading, oilOf(reading), "temperature")}`);
};

const sampleToWeigh: Work = (reading) => {
  const expected = reading.figure("expectedFfaPercent");
  const molarity = reading.figure("molarity");
  const target = reading.figure("targetTitre");
  return reading.answer(`${molarity}*${target}*${fattyAcidMass(reading)}/(10*${expected})`);
};

const chargePercent: Work = (reading) => {
  const charge = reading.figure("gramsPerLitre");
  const assay = reading.figure("assayPercent");
  const density = densityText(reading, oilOf(reading), "temperature");
  return reading.answer(`${charge}*${assay}/(1000*${density})`);
};

const molarRatio: Work = (reading) => {
  const share = reading.figure("volumePercent");
  const oil = oilOf(reading);
  const density = densityText(reading, oil, "temperature");
  const kilograms = `${share}/100*${figure(methanolDensity)}`;
  return reading.answer(`${kilograms}/${figure(methanol)}*${triglycerideText(oil)}/${density}`);
};

export const amounts = {
  SAMPLETOWEIGH: sampleToWeigh,
  SAMPLEGRAMS: sampleGrams,
  OILMASS: oilMass,
  CHARGEPERCENT: chargePercent,
  MOLARRATIO: molarRatio,
};
