/** The address a build is made for, checked before anything is written for it. */

/** Where the add-in is served while it is being developed. manifest.xml is written for this. */
export const localBase = "https://localhost:3001/";

const example = "for example --env base=https://your.host/titrebook";

/**
 * @param asked  what came after `--env base=`; undefined for a build that is served on this machine
 * @returns the address with its closing slash; throws a sentence when it cannot be one
 */
export function baseFrom(asked: unknown): string {
  if (asked === undefined) return localBase;
  if (typeof asked !== "string" || !URL.canParse(asked)) {
    throw new Error(`The base is "${String(asked)}", which is no address: ${example}.`);
  }
  const address = new URL(asked);
  if (address.protocol !== "https:") {
    throw new Error(
      `The base ${asked} is not https, and the program loads nothing else: ${example}.`,
    );
  }
  if (address.search !== "" || address.hash !== "") {
    throw new Error(`The base ${asked} has a ? or a #: give the folder alone, ${example}.`);
  }
  return `${address.origin}${address.pathname.replace(/\/+$/, "")}/`;
}
