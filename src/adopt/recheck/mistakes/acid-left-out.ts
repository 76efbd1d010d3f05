import { isWhole, mistake } from "./mistake";

export const acidLeftOut = mistake({
  id: "acid-left-out",
  name: "No lye for the acid at all",
  sentence: "The dose is the lye for the reaction alone: nothing is there for the acid.",
  ways: (role) => (isWhole(role) ? [{ acidPart: () => 0 }] : []),
});
