import { isOfSample, mistake } from "./mistake";

export const percentAsMolarity = mistake({
  id: "percent-as-molarity",
  name: "0.1 % taken for 0.1 mol/L",
  sentence:
    "The titrant's strength in percent is used as mol/L: 0.1 % of KOH is 0.0178 mol/L, 0.1 % of NaOH 0.0250 mol/L.",
  ways: (role, { strength }) =>
    isOfSample(role) && strength !== undefined
      ? // 1 g/L is 0.1 %.
        [{ molarity: (r) => (r.strengthGiven ?? r.strength ?? 0) / 10 }]
      : [],
});
