/** Water of oil or of fuel: typed, weighed by drying, or by the gas of calcium hydride. Said once for both. */
import { limits } from "../../core/reference/limits";
import { numberField } from "../fields/number-facts";
import { pick } from "../fields/pick-facts";

export const waterPick = pick(
  "list",
  "How was the water measured?",
  {
    typed: "Meter or laboratory",
    weighed: "By drying and weighing",
    gas: "By calcium hydride",
  },
  "typed",
  { isKept: true },
);

const optional = { isOptional: true } as const;

/** All but the figure typed, whose label says of what. */
export const waterFields = {
  dish: numberField("Dish, empty", limits.dishMass, optional),
  wetMass: numberField("Dish and sample, before", limits.dishMass, optional),
  dryMass: numberField("Dish and sample, dried and cool", limits.dishMass, optional),
  dryingStep: numberField("Balance step", limits.massStep, {
    ...optional,
    hint: "Smallest difference it shows.",
    isKept: true,
  }),
  pressureRise: numberField("Pressure rose by", limits.pressureRise, optional),
  gasSpace: numberField("Gas above the sample", limits.volume, { ...optional, isKept: true }),
  gasTemperature: numberField("Its temperature", limits.temperature, { ...optional, unit: "°C" }),
  gasMass: numberField("Sample in the vessel", limits.sampleMass, optional),
};

export type WaterField = keyof typeof waterFields | "water";
export type WaterBy = (typeof waterPick)["choices"][number][0];
