import { fattyAcids, oleic } from "../../../core/reference/fatty-acids";
import { isOfAcid, mistake, nearly } from "./mistake";

/** Acids nearer to oleic than this are a matter of convention. */
const leastDifference = 0.02;
const acids = fattyAcids.filter(
  ({ reportedMass }) =>
    Math.abs(reportedMass.div(oleic.reportedMass).toNumber() - 1) > leastDifference,
);

export const otherAcid = mistake({
  id: "other-acid",
  name: "Another acid's molar mass",
  sentence:
    "The percentage is worked out with the molar mass of another acid than it is reported as.",
  ways: (role) => (role === "ffa" || isOfAcid(role) ? acids.map((acid) => ({ acid })) : []),
  shows: ({ numbers }) => nearly(numbers, 25.6, 256, 20, 200, 33.8, 338),
});
