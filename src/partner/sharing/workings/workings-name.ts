/** The sheet that a partner copy adds for the steps in between; another number where the name is taken. */
export const workingsName = "Workings";

const cellOnWorkings = new RegExp(`^(?:${workingsName}|'${workingsName} \\d+')!`, "i");

/**
 * Does a formula look its steps up there by its own row, as the formulas of a partner copy do? A new row
 * has none there: its results would be #N/A.
 * @param texts the formula's parts, as a reader cut them
 */
export const looksUpItsRow = (texts: readonly string[]): boolean =>
  texts.some((text) => cellOnWorkings.test(text)) && texts.some((text) => /^ROW\b/i.test(text));
