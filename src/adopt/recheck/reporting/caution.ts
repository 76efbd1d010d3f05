/** Said beside grams of lye: the figure is of the past, and lye added late is a hazard of its own. */
export const ofTheBook = "This is about the record. Do not add lye to a batch because of it.";
