/** Twins of the functions about the finished fuel and its water. */
import { waterAdvice, waterDigits, waterSentence } from "../../core/batch/water-words";
import { exact, hundred } from "../../core/exact/exact";
import { thiosulfatePerGlycerol } from "../../core/fuel/glycerol";
import type { MilligramPerKilogram } from "../../core/quantity/quantity";
import { atomicWeights } from "../../core/reference/atomic-weights";
import { glycerol as glycerolMass, water } from "../../core/reference/compounds";
import { gasConstant, zeroCelsius } from "../../core/reference/gas";
import { limits } from "../../core/reference/limits";
import { soapMass } from "./batch";
import { batchText } from "./shared/batch-text";
import { blanksOf, isAbove } from "./shared/blanks";
import { oilOf, triglycerideText } from "./shared/density";
import { listOf, meanOf } from "./shared/list";
import type { Reading } from "./shared/reading";
import { shown } from "./shared/shown-text";
import { atMost, figure, spoken, text } from "./shared/text";
import { wordOf } from "./shared/word";
import type { Work } from "./shared/work";
import { baseMass, baseOf } from "./shared/words";

/** Figures as typed have 15 digits: a smaller difference is a rounding error of the program's own. */
const rounding = "5E-16";

/** What a titration with acid finds in fuel, mg/kg, of so many g/mol. */
function inFuel(reading: Reading, perMole: (reading: Reading) => string): ReturnType<Work> {
  const titres = listOf(reading, "titres");
  const blank = blanksOf(reading);
  const molarity = reading.figure("molarity");
  const mass = reading.figure("sampleMass");
  reading.allow(isAbove(titres.least, blank.mean));
  const net = blank.mean === "0" ? meanOf(titres) : `(${meanOf(titres)}-${blank.mean})`;
  const found = `${net}*${molarity}*${perMole(reading)}*1000/${mass}`;
  reading.allow(atMost(found, limits.inFuel.to));
  return reading.answer(found);
}

const fuelMetal: Work = (reading) => {
  const soap = reading.figure("soap");
  const base = baseOf(reading);
  const metal = base.pick("the base's metal, g/mol", (each) => exact(atomicWeights[each.metal]));
  const found = wordOf<MilligramPerKilogram>(reading, "catalyst");
  const freeBase = found.pick("free base, mg/kg; 0 for none", (each) => each, true);
  if (found.known === undefined) reading.allow(`ISNUMBER(${freeBase})`);
  const ofSoap = `${soap}*${metal}/${soapMass(reading)}`;
  return reading.answer(`${ofSoap}+${freeBase}*${metal}/${baseMass(base)}`);
};

const glycerol: Work = (reading) => {
  const titres = listOf(reading, "titres");
  const blanks = listOf(reading, "blanks");
  const molarity = reading.figure("molarity");
  const mass = reading.figure("sampleMass");
  reading.allow(isAbove(titres.least, "0"), isAbove(blanks.least, `MAX(${titres.range.text})`));
  const factor = figure(glycerolMass.div(thiosulfatePerGlycerol * 10));
  const found = `(${meanOf(blanks)}-${meanOf(titres)})*${molarity}*${factor}/${mass}`;
  reading.allow(atMost(found, limits.glycerolPercent.to));
  return reading.answer(found);
};

const conversion: Work = (reading) => {
  const total = reading.figure("totalGlycerol");
  const free = reading.figure("freeGlycerol");
  const bound = `(${figure(glycerolMass.times(hundred))}/${triglycerideText(oilOf(reading))})`;
  const left = `(${total}-${free})`;
  reading.allow(`${free}-${total}<=${rounding}*${total}`, atMost(left, bound));
  return reading.answer(`100*(${bound}-MIN(MAX(${left},0),${bound}))/${bound}`);
};

const lossOnHeating: Work = (reading) => {
  const dish = reading.figure("dishMass");
  const before = reading.figure("massBefore");
  const after = reading.figure("massAfter");
  const tiny = `${rounding}*${before}`;
  reading.allow(
    `${before}-${dish}>${tiny}`,
    `${dish}-${after}<=${tiny}`,
    `${before}-${after}>${tiny}`,
  );
  return reading.answer(`100*(${before}-${after})/(${before}-${dish})`);
};

const waterFromGas: Work = (reading) => {
  const [rise, space] = [reading.figure("pressureRise"), reading.figure("gasSpace")];
  const celsius = reading.figure("temperature");
  const mass = reading.figure("sampleMass");
  const moles = `${rise}*${space}/(${figure(gasConstant)}*(${celsius}+${figure(zeroCelsius)}))`;
  const found = `${moles}*${figure(water.times(hundred))}/${mass}`;
  reading.allow(atMost(found, figure(hundred)));
  return reading.answer(found);
};

const waterBalance: Work = (reading) => {
  const measured = reading.figure("waterPercent");
  const batch = batchText(reading);
  const { oil } = batch;
  const methanol = reading.figure("methanolMass");
  const methanolWater = reading.figure("methanolWaterPercent");
  const parts = reading.call.helperColumn(
    "water of the batch, part by part, kg",
    [`${oil}*${measured}/100`, ...batch.water(batch.lye), `${methanol}*${methanolWater}/100`].map(
      (formula) => reading.guarded(formula),
    ),
  );
  const all = reading.call.helper("all water, kg", `SUM(${parts.text})`);
  const percent = reading.call.helper("all water, % of the oil", `${all}*100/${oil}`);
  const advice = waterAdvice.map(([, words]) => text(words)).join(",");
  const most = `CHOOSE(MATCH(MAX(${parts.text}),${parts.text},0),${advice})`;
  const none = undefined;
  return reading.table([
    ...waterAdvice.map((_, place) => [none, parts.cell(place, 0), none]),
    [none, all, none],
    [none, percent, none],
    [none, spoken(waterSentence, shown(reading, percent, waterDigits), most), none],
  ]);
};

const temperatureRise: Work = (reading) => {
  const [lye, methanol] = [reading.figure("lyeMass"), reading.figure("methanolVolume")];
  const trial = `${reading.figure("trialLyeMass")}/${reading.figure("trialMethanolVolume")}`;
  return reading.answer(`${reading.figure("trialRise")}*(${lye}/${methanol})/(${trial})`);
};

export const fuel = {
  FUELSOAP: ((reading) => inFuel(reading, soapMass)) as Work,
  FUELCATALYST: ((reading) => inFuel(reading, (of) => baseMass(baseOf(of)))) as Work,
  FUELMETAL: fuelMetal,
  GLYCEROL: glycerol,
  CONVERSION: conversion,
  LOSSONHEATING: lossOnHeating,
  WATERFROMGAS: waterFromGas,
  WATERBALANCE: waterBalance,
  TEMPERATURERISE: temperatureRise,
};
