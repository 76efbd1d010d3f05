/** Twins of the titrant functions. */
import { hundred } from "../../core/exact/exact";
import type { PerCelsius } from "../../core/quantity/quantity";
import { potassiumHydrogenPhthalate } from "../../core/reference/compounds";
import { figure } from "./shared/text";
import { wordOf } from "./shared/word";
import type { Work } from "./shared/work";
import { baseMass, baseOf } from "./shared/words";

const molarity: Work = (reading) => {
  const mass = reading.figure("mass");
  const volume = reading.figure("volume");
  const base = baseMass(baseOf(reading));
  return reading.answer(`${mass}*${reading.figure("assayPercent")}/(100*${base}*${volume})`);
};

const titrantMass: Work = (reading) => {
  const strength = reading.figure("molarity");
  const volume = reading.figure("volume");
  const base = baseMass(baseOf(reading));
  return reading.answer(`${strength}*${volume}*${base}*100/${reading.figure("assayPercent")}`);
};

const molarityFromKhp: Work = (reading) => {
  const mass = reading.figure("khpMass");
  const titre = reading.figure("correctedTitre");
  const purity = reading.figure("purityPercent");
  const perMole = figure(hundred.times(potassiumHydrogenPhthalate));
  return reading.answer(`1000*${mass}*${purity}/(${perMole}*${titre})`);
};

const temperatureCorrected: Work = (reading) => {
  const titre = reading.figure("titre");
  const [readAt, setAt] = [reading.figure("readAt"), reading.figure("setAt")];
  const solvent = wordOf<PerCelsius>(reading, "titrantSolvent");
  const expansion = solvent.pick("expansion of the titrant, per C", (each) => each, true);
  return reading.answer(`${titre}*(1-${expansion}*(${readAt}-(${setAt})))`);
};

export const titrant = {
  MOLARITY: molarity,
  TITRANTMASS: titrantMass,
  MOLARITYFROMKHP: molarityFromKhp,
  TEMPERATURECORRECTED: temperatureCorrected,
};
