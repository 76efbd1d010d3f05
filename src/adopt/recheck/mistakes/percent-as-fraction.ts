import { isDose, isOfSample, mistake } from "./mistake";

export const percentAsFraction = mistake({
  id: "percent-as-fraction",
  name: "% typed as a fraction",
  sentence: "A figure in percent is used as a fraction, or the other way round: a hundredfold.",
  ways: (role, { assay }) => [
    ...(isOfSample(role) ? [{ ffaScale: 100 }, { ffaScale: 0.01 }] : []),
    ...(isDose(role) && assay !== undefined && assay < 99.5
      ? [
          { weighing: (percent: number) => 1 / percent },
          { weighing: (percent: number) => 10_000 / percent },
        ]
      : []),
  ],
});
