/** What is asked on the command line: npm run share -- IN.xlsx OUT.xlsx [--numbers] [--force]. */
import { extname } from "node:path";

export interface Request {
  readonly from: string;
  readonly to: string;
  readonly kind: "partner" | "numbers";
  /** An existing OUT may be written over. */
  readonly mayReplace: boolean;
}

const usage = "npm run share -- IN.xlsx OUT.xlsx [--numbers] [--force]";

const known = ["--numbers", "--force"];

/** The request, or the sentence that says what is wrong with it. */
export function readRequest(given: readonly string[]): Request | string {
  const options = given.filter((word) => word.startsWith("-"));
  const unknown = options.find((option) => !known.includes(option));
  if (unknown !== undefined) return `There is no option ${unknown}: ${usage}`;
  const [from, to, ...more] = given.filter((word) => !word.startsWith("-"));
  if (from === undefined || to === undefined) return `Name two files: ${usage}`;
  if (more.length > 0) return `Name two files and no more: ${usage}`;
  const kind = extname(from).toLowerCase() === ".xlsm" ? ".xlsm" : ".xlsx";
  if (extname(to).toLowerCase() !== kind) {
    return `Give the copy a name that ends in ${kind}: "${to}" does not.`;
  }
  return {
    from,
    to,
    kind: options.includes("--numbers") ? "numbers" : "partner",
    mayReplace: options.includes("--force"),
  };
}
