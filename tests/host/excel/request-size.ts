/**
 * How large a request is, as the spreadsheet program counts: calls and what they are given as JSON. On
 * the web neither a request nor its answer may be larger than 5 MB. What a call costs beside what it is
 * given is set against the maker's own client in excel-vendor.test.ts.
 */
export const mostBytes = 5_000_000;

/** An object of the program or a call of it, without what is given. */
export const perCall = 130;

/** An object of the program is handed over by its number; a rule by a few words. */
const perObject = 60;

export function bytesOf(given: unknown): number {
  if (Array.isArray(given)) return given.reduce<number>((sum, each) => sum + bytesOf(each) + 1, 2);
  if (typeof given === "string") return Buffer.byteLength(given) + 2;
  return typeof given === "object" && given !== null ? perObject : String(given).length;
}
