import { amountUnitNamed } from "../../../core/quantity/units";
import { isDose, mistake } from "./mistake";

const litre = amountUnitNamed("l");

export const kilogramsAsLitres = mistake({
  id: "kilograms-as-litres",
  name: "Kilograms taken for litres",
  sentence:
    "A number of kilograms of oil is used as litres: a kilogram of oil fills about 1.09 L, so what is given for each litre comes out about 8 % too small.",
  ways: (role, { amount, charge, isDosedByLitre, held }) => {
    if (!amount || !isDose(role) || (charge?.per !== "g/L" && isDosedByLitre !== true)) return [];
    const isWeighed = amount.unit.measures === "mass";
    return [
      // The mass is right, and only what goes by the litre is taken for each kilogram.
      ...(isWeighed || held.has("oilMass") ? [{ kilogramsAsLitres: true }] : []),
      ...(amount.unit.name === "kg" && litre ? [{ unit: () => litre }] : []),
    ];
  },
  shows: ({ roles, numbers }) =>
    roles.has("oilMass") &&
    !roles.has("oilAmount") &&
    !roles.has("density") &&
    !numbers.some((each) => each > 0.85 && each < 0.96),
});
