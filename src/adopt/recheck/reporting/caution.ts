/** Said beside grams of lye: the figure is of the past, and lye added late is a hazard of its own. */
export const ofTheBook =
  "Said of the book, not of a batch that is running: do not add lye to it after this.";
