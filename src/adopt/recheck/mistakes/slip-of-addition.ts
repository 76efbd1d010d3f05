import { mistake, noWays } from "./mistake";

export const slipOfAddition = mistake({
  id: "slip-of-addition",
  name: "Slip of addition",
  sentence:
    "The parts for the acid and for the reaction are right, and the total is not their sum.",
  ways: noWays,
});
