/** Twins of the functions that turn amounts into each other. */
import { limits } from "../../core/reference/limits";
import type { AmountUnit } from "../../core/quantity/units";
import { exact } from "../../core/exact/exact";
import { densityText, oilOf } from "./shared/density";
import type { Reading } from "./shared/reading";
import { when } from "./shared/text";
import { wordOf } from "./shared/word";
import type { Work } from "./shared/work";

/** Kilograms of oil in one of the unit: a volume counts by its density. */
export function kilogramsInOne(reading: Reading, temperature?: string): string {
  const unit = wordOf<AmountUnit>(reading, "unit");
  const factor = unit.pick("one of the unit, in L or kg", (each) => each.factor);
  const density = densityText(reading, oilOf(reading), temperature);
  if (unit.known) return unit.known.measures === "mass" ? factor : `${factor}*${density}`;
  const isVolume = unit.pick("1 for a unit of volume", (each) =>
    exact(each.measures === "volume" ? 1 : 0),
  );
  return `${factor}*${when(`${isVolume}=1`, density, "1")}`;
}

const oilMass: Work = (reading) => {
  const amount = reading.figure("amount");
  const mass = `${amount}*${kilogramsInOne(reading, "temperature")}`;
  reading.allow(`${mass}<=${limits.oilMass.to}`);
  return reading.answer(mass);
};

export const amounts = { OILMASS: oilMass };
