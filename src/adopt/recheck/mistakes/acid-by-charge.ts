import { isOfAcid, mistake } from "./mistake";

export const acidByCharge = mistake({
  id: "acid-by-charge",
  name: "FFA fraction times base charge",
  sentence:
    "The lye for the acid is the FFA fraction times the base charge. It should be one mole for each mole of acid: 26 times as much where the charge is 7 g/L of KOH.",
  ways: (role, { charge }) =>
    isOfAcid(role) && charge !== undefined
      ? [
          {
            acidPart: (ffa, reaction) => {
              const percent = ffa();
              const base = reaction();
              return percent === undefined || base === undefined
                ? undefined
                : (percent / 100) * base;
            },
          },
        ]
      : [],
  shows: ({ roles, numbers }) =>
    (roles.has("ffa") || roles.has("acidValue")) &&
    (roles.has("baseCharge") || roles.has("reactionDose")) &&
    !numbers.some((each) => (each > 0.13 && each < 0.3) || (each > 38 && each < 85)),
  sleepsIn: ["acidDose"],
});
