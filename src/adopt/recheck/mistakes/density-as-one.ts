import { isOfOil, isOfSample, mistake } from "./mistake";

export const densityAsOne = mistake({
  id: "density-as-one",
  name: "Density taken as 1",
  sentence: "A volume of oil is taken for its mass: a litre of oil weighs about 0.92 kg, not 1 kg.",
  ways: (role, { amount, volume, masses }) => [
    ...(isOfOil(role) && amount?.unit.measures === "volume" ? [{ oilDensity: 1 }] : []),
    ...(isOfSample(role) && volume !== undefined && masses.every((mass) => mass === undefined)
      ? [{ sampleDensity: 1 }]
      : []),
  ],
  shows: ({ roles, numbers }) =>
    !roles.has("density") && !numbers.some((each) => each > 0.85 && each < 0.96),
});
