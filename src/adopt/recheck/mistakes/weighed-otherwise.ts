import { mistake, noWays } from "./mistake";

export const weighedOtherwise = mistake({
  id: "weighed-otherwise",
  name: "Another amount weighed than worked out",
  sentence: "What was weighed out is not what the sheet had worked out.",
  ways: noWays,
});
