/** other/google-sheets: the functions as one script to paste, and the page that says how. */
import { readFileSync } from "node:fs";
import { catalogue } from "../../../functions/catalogue";
import { helpPage } from "../help-page";
import { wrapperOf } from "./wrapper";

const around = readFileSync(new URL("around.js", import.meta.url), "utf8");

/** Everything the spreadsheet must not meet by name stands inside: what was associated comes out. */
const inside = (functions: string): string => `const titreFunctions_ = (() => {
const found = {};
const CustomFunctions = { associate: (id, call) => { found[id] = call; } };
${functions}
;return found;
})();`;

/**
 * @param functions  functions.js as it was built
 * @param licences  of what is in it
 */
const googleSheetsScript = (functions: string, licences: string, version: string): string =>
  [
    `// Titrebook ${version}: its worksheet functions for Google Sheets, as TITRE_ACIDVALUE and so on.`,
    "// Paste the whole of this into Extensions > Apps Script; index.html beside it says how, and what differs.",
    "// Made by `npm run build`; not to be edited. Titrebook: MIT. Inside it:",
    ...licences
      .trim()
      .split(/\r?\n/)
      .map((line) => `// ${line}`.trimEnd()),
    "",
    inside(functions),
    around,
    ...catalogue.map((entry) => `${wrapperOf(entry)}\n`),
  ].join("\n");

export const googleSheetsFiles = (
  functions: string,
  licences: string,
  version: string,
): Record<string, string> => ({
  "other/google-sheets/titrebook.js": googleSheetsScript(functions, licences, version),
  "other/google-sheets/index.html": helpPage("other-spreadsheets.html", "../../help/"),
});
