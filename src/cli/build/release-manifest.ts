/** manifest.xml as it is given to people: for the address it is served from, with its version. */
import { localBase } from "./base";

/** What changes with a release. Icons and help keep their addresses. */
const versioned = /(taskpane\.html|functions\.js|functions\.json)(?=")/g;

/**
 * The manifest for a base. For another machine each page and script carries ?v=, so that a new
 * manifest never meets the copy of an old file that the program has kept.
 */
export const releaseManifest = (manifest: string, base: string, version: string): string => {
  const moved = manifest.replaceAll(localBase, base);
  return base === localBase ? moved : moved.replace(versioned, `$1?v=${version}`);
};
