import { amountUnitNamed } from "../../../core/quantity/units";
import { isOfOil, mistake, nearly } from "./mistake";

const others: Readonly<Record<string, string>> = { us_gal: "uk_gal", uk_gal: "us_gal" };

export const otherGallon = mistake({
  id: "other-gallon",
  name: "US and imperial gallon mixed up",
  sentence: "An imperial gallon is 4.546 L, a US gallon 3.785 L: one is used for the other.",
  ways: (role, { amount }) =>
    isOfOil(role) && amount && others[amount.unit.name]
      ? [{ unit: (unit) => amountUnitNamed(others[unit.name] ?? "") ?? unit }]
      : [],
  shows: ({ numbers }) => nearly(numbers, 3.785, 4.546),
});
