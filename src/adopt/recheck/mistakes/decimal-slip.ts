import { mistake } from "./mistake";

/** A hundredfold is percent and fraction first. */
const slips = [10, 0.1, 100, 0.01, 1000, 0.001];

export const decimalSlip = mistake({
  id: "decimal-slip",
  name: "Decimal point wrong",
  sentence:
    "The figure is ten or a thousand times too large or too small: the decimal point slipped, or grams and kilograms were mixed up.",
  ways: () => slips.map((factor) => ({ result: (right) => right * factor })),
  isAlone: "in doses",
});
