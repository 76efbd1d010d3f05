/** A text that somebody meant as a figure: it has its unit behind it, or a decimal comma. */

const units = "mL|L|g|kg|mg|lb|oz|mol/L|g/L|mg KOH/g|%|% FFA|°C|C|°F|F|US gal|gal|drops?";
const withUnit = new RegExp(`^[+-]?\\d*[.,]?\\d+\\s*(${units})\\.?$`, "i");
const withComma = /^([+-]?\d*),(\d+)$/;

/**
 * What to type instead, in a sentence; undefined for words that are words.
 * @example meantFigure("2,45") // "“2,45” is words here, not a figure: type 2.45."
 */
export function meantFigure(text: string): string | undefined {
  const typed = text.trim();
  const [, unit] = withUnit.exec(typed) ?? [];
  if (unit !== undefined) return `“${typed}” is words here, not a figure: leave out the ${unit}.`;
  const [, whole = "", part] = withComma.exec(typed) ?? [];
  if (part === undefined) return undefined;
  return `“${typed}” is words here, not a figure: type ${whole === "" ? "0" : whole}.${part}.`;
}
