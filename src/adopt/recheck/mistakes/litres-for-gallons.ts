import { amountUnitNamed } from "../../../core/quantity/units";
import { isDose, isOfOil, mistake } from "./mistake";

const litre = amountUnitNamed("l");
const gallons = ["us_gal", "uk_gal"].flatMap((name) => amountUnitNamed(name) ?? []);

/** What gallons are in litres, or litres in the gallons they are taken for. */
const others = (name: string) =>
  name === "l" ? gallons : gallons.some((each) => each.name === name) && litre ? [litre] : [];

export const litresForGallons = mistake({
  id: "litres-for-gallons",
  name: "Grams a litre times gallons",
  sentence:
    "A number of gallons is used as litres, or of litres as gallons: a US gallon is 3.785 L, an imperial gallon 4.546 L.",
  ways: (role, { amount, charge }) => {
    if (!amount || !isOfOil(role)) return [];
    const found = others(amount.unit.name);
    const factor = amount.unit.factor.toNumber();
    return [
      ...found.map((other) => ({ unit: () => other })),
      // The mass is right, and only the charge is taken for each gallon or litre.
      ...(isDose(role) && charge?.per === "g/L"
        ? found.map((other) => ({ chargeScale: other.factor.toNumber() / factor }))
        : []),
    ];
  },
});
