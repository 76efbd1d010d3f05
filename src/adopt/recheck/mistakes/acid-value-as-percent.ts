import { acidValueDefinition } from "../../../core/reference/compounds";
import { oleic } from "../../../core/reference/fatty-acids";
import { isOfAcid, mistake } from "./mistake";

/** mg KOH/g for each % FFA as oleic acid. */
const factor = (10 * acidValueDefinition.toNumber()) / oleic.reportedMass.toNumber();

export const acidValueAsPercent = mistake({
  id: "acid-value-as-percent",
  name: "Acid value and % FFA mixed up",
  sentence:
    "The acid value stands where % FFA belongs, or the other way round: the acid value is 1.99 times the percentage as oleic acid.",
  ways: (role) =>
    role === "ffa"
      ? [{ ffaScale: factor }]
      : role === "acidValue"
        ? [{ result: (right) => right / factor }]
        : isOfAcid(role)
          ? [{ ffaScale: factor }, { ffaScale: 1 / factor }]
          : [],
  isAlone: true,
});
