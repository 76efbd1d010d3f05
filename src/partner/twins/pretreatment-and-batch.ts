/** Twins of PRETREATMENT and BATCH. */
import { solutionBelow, volumeTemperature } from "../../core/batch/batch";
import type { Work as Doing } from "../../core/batch/cautions";
import { densityAt } from "../../core/batch/density";
import {
  basePerSulfuricAcid,
  methanolPerGramOfAcid,
  sulfuricAcidPerGramOfAcid,
} from "../../core/batch/pretreatment";
import { thousand, zero } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { glycerol, methanol, oleicAcid, sulfuricAcid } from "../../core/reference/compounds";
import { sulfuricAcidDensity } from "../../core/reference/liquids";
import type { Oil } from "../../core/reference/oils";
import { cautionRows } from "../../functions/batch/caution-rows";
import { soapMass, soapText } from "./batch";
import { batchText } from "./shared/batch-text";
import { oilOf, triglycerideText } from "./shared/density";
import {
  asWeighed,
  definition,
  ffaAsOleic,
  methanolLitres,
  methanolMass,
  pureForAcid,
  pureForReaction,
  triglycerideShare,
  withinLimit,
} from "./shared/doses";
import type { Reading } from "./shared/reading";
import { routeText } from "./shared/route-text";
import { figure, spoken, text, when } from "./shared/text";
import type { Work } from "./shared/work";
import { baseMass, baseOf } from "./shared/words";

/** A row of label, amount and unit: words that depend on nothing keep their place. */
const amount = (formula: string, unit?: string, label?: string) => [label, formula, unit];
const wordsOnly = [undefined, undefined, undefined];
const cautionWords = (work: Doing) => cautionRows(work).map(() => wordsOnly);

const pretreatment: Work = (reading) => {
  const oil = reading.figure("oilMass");
  const value = reading.figure("acidValue");
  const base = baseMass(baseOf(reading));
  const assay = reading.figure("assayPercent");
  const acidAssay = reading.figure("acidAssayPercent");
  const { helper } = reading.call;
  const ffa = helper(
    "free fatty acid, kg",
    reading.guarded(`${oil}*${value}/${definition}*${figure(oleicAcid.div(thousand))}`),
  );
  const methanolKilograms = `${ffa}*${figure(methanolPerGramOfAcid)}`;
  const pureAcid = `${ffa}*${figure(sulfuricAcidPerGramOfAcid)}`;
  const acid = helper("sulfuric acid as weighed, kg", asWeighed(pureAcid, acidAssay));
  const moles = `${pureAcid}*1000/${figure(sulfuricAcid)}`;
  const base2 = `${moles}*${figure(basePerSulfuricAcid)}*${base}`;
  return reading.table([
    amount(ffa),
    amount(methanolKilograms),
    amount(methanolLitres(methanolKilograms)),
    amount(acid),
    amount(`${acid}*1000/${figure(sulfuricAcidDensity)}`),
    amount(asWeighed(base2, assay)),
    wordsOnly,
    ...cautionWords("acid step"),
  ]);
};

/** A fat is measured by volume where it is first liquid. */
const densityWhereLiquid = (oil: Oil) => {
  const found = densityAt(oil, volumeTemperature(oil));
  return isProblem(found) ? zero : found;
};

const oilTexts = (reading: Reading) => {
  const oil = oilOf(reading);
  return {
    density: oil.pick("oil: density where its volume counts, kg/L", densityWhereLiquid, true),
    at: oil.pick("oil: where its volume counts, C", volumeTemperature),
    isNamed: oil.known !== undefined,
    triglyceride: triglycerideText(oil),
  };
};

const wholeBatch: Work = (reading) => {
  const { helper } = reading.call;
  const batch = batchText(reading);
  const { oil, value, mass, isMethoxide, assay, charge } = batch;
  const ratio = reading.figure("molarRatio");
  const { density, at, isNamed, triglyceride } = oilTexts(reading);
  const limit = reading.figure("limitFfaPercent");
  withinLimit(reading, value);
  const share = triglycerideShare(reading, value);

  const methanolKilograms = helper(
    "methanol, kg",
    reading.guarded(methanolMass(oil, share, ratio, triglyceride)),
  );
  const lye = helper("catalyst as weighed, g", reading.guarded(batch.lye));
  const kilomoles = helper(
    "triglyceride, kmol",
    reading.guarded(`${oil}*${share}/${triglyceride}`),
  );
  const brought = helper(
    "methanol brought by a methoxide solution, kg",
    when(`AND(${isMethoxide}=1,${assay}<${figure(solutionBelow)})`, batch.rest(lye), "0"),
  );
  const oilAt = (unit: string) =>
    isNamed ? undefined : spoken((celsius) => `${unit} at ${celsius} C`, at);
  const ester = `(${triglyceride}+${figure(methanol.times(3).minus(glycerol))})`;
  return reading.table([
    amount(oil),
    amount(value),
    amount(ffaAsOleic(value)),
    amount(methanolLitres(methanolKilograms)),
    amount(methanolKilograms),
    amount(`${methanolLitres(methanolKilograms)}*100/(${oil}/${density})`, oilAt("%")),
    amount(pureForAcid(oil, value, mass)),
    amount(pureForReaction(oil, charge)),
    amount(lye),
    amount(`${lye}/(${oil}/${density})`, oilAt("g/L")),
    amount(methanolLitres(brought)),
    amount(methanolLitres(`MAX(0,${methanolKilograms}-${brought})`)),
    amount(soapText(oil, value, soapMass(reading))),
    ...batch.water(lye).map((kilograms) => amount(kilograms)),
    amount(`${kilomoles}*${ester}`),
    amount(`${kilomoles}*${figure(glycerol)}`),
    amount(routeText(reading, value, text(""), limit)),
    ...cautionWords("dosing"),
  ]);
};

export const pretreatmentAndBatch = { PRETREATMENT: pretreatment, BATCH: wholeBatch };
