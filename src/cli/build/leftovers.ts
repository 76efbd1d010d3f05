/** Addresses of this machine that must not be left in a build for another one. */

const ownMachine = /https?:\/\/(?:localhost|127\.0\.0\.1|\[::1\])(?::\d+)?/gi;

/**
 * Texts of the embedded spreadsheet's own code: it compares a typed link with the first, and reads
 * links against the second where a page has no address. It asks neither for anything.
 */
const harmless: Readonly<Record<string, readonly string[]>> = {
  "workbench.grid.js": ["http://localhost:3002", "http://localhost"],
};

/** What is left in one file; empty when nothing is. */
export const leftIn = (name: string, content: string): string[] => [
  ...new Set(
    [...content.matchAll(ownMachine)]
      .map(([found]) => found)
      .filter((found) => !(harmless[name] ?? []).includes(found)),
  ),
];
