import { isOfOil, isOfSample, mistake } from "./mistake";

export const densityAsOne = mistake({
  id: "density-as-one",
  name: "Density taken as 1",
  sentence: "A volume of oil is taken for its mass: a litre of oil weighs about 0.92 kg, not 1 kg.",
  ways: (role, { amount, volume, masses }) => {
    const isByVolume = amount?.unit.measures === "volume";
    const oil = isOfOil(role) && isByVolume ? [{ oilDensity: 1 }] : [];
    const isDrawn = volume !== undefined && masses.every((mass) => mass === undefined);
    const sample = isOfSample(role) && isDrawn ? [{ sampleDensity: 1 }] : [];
    // Read off the burette, g for a litre of what was drawn: in the acid's part both cancel.
    const both = oil.length > 0 && sample.length > 0 ? [{ oilDensity: 1, sampleDensity: 1 }] : [];
    return [...oil, ...sample, ...both];
  },
  shows: ({ roles, numbers }) =>
    !roles.has("density") && !numbers.some((each) => each > 0.85 && each < 0.96),
});
