import { mistake } from "./mistake";

export const copiedFromAbove = mistake({
  id: "copied-from-above",
  name: "The same as in the row above",
  sentence: "The figure is that of the row above: it was copied, and not worked out for this row.",
  ways: (role, { above }) => {
    const copied = above(role);
    return copied === undefined ? [] : [{ result: () => copied }];
  },
  isCopy: true,
  isAlone: true,
});
