/** Which names a worksheet function may have. Once published a name never changes. */
import { builtInNames } from "./built-in-names";

const shortest = 3;
/** The longest a name and its namespace stay readable in a formula bar. */
const longest = 24;

/** A1 to XFD1048576, whatever its figures: AV1 and FFA1 are cells. */
const looksLikeCell = /^[A-Z]{1,3}\d+$/;
/** The other way to write cells: R1C1, R2C. */
const looksLikeRowColumn = /^R\d*C\d*$/;

/**
 * Why a name is refused, in a sentence; undefined when it is fine.
 * @param name in capitals
 * @param taken the ids there are
 */
export function nameRefusal(name: string, taken: readonly string[]): string | undefined {
  if (name === "") return "Give the function a name: npm run new-function DRYINGTIME.";
  if (looksLikeCell.test(name) || looksLikeRowColumn.test(name)) {
    return `${name} could be read as a cell: use letters only, such as DRYINGTIME.`;
  }
  if (!/^[A-Z]+$/.test(name)) {
    return `${name} has something other than the letters A to Z in it: files hold a function's name without its dots and spaces, so two names could become one.`;
  }
  if (name.length < shortest) return `${name} is too short: use ${shortest} letters or more.`;
  if (name.length > longest) return `${name} is too long: use ${longest} letters at most.`;
  if (taken.includes(name))
    return `${name} is taken: there is a function of that name. Choose another.`;
  if (builtInNames.has(name))
    return `${name} is a function that spreadsheets have already: choose another name.`;
  return undefined;
}
