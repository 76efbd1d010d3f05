import { molarMass, otherBases } from "../arithmetic/molar-masses";
import { isOfAcid, isWhole, mistake, nearly } from "./mistake";

export const otherBase = mistake({
  id: "other-base",
  name: "Another base's figure",
  sentence:
    "The lye is counted in another base than is weighed out: 1 g of NaOH does what 1.40 g of KOH does.",
  ways: (role, { base }) =>
    base && isOfAcid(role)
      ? otherBases(base).flatMap((other) => [
          { otherBase: other },
          // Figures of the other base all through, its charge as well.
          ...(isWhole(role)
            ? [{ otherBase: other, chargeScale: molarMass(other) / molarMass(base) }]
            : []),
        ])
      : [],
  shows: ({ numbers }) => nearly(numbers, 40, 39.997, 56.1, 0.1416, 0.144, 0.1986, 0.197),
});
