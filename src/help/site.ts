/** Every file of the help site, by name. The build writes them; the tests read them. */
import type { WorksheetFunction } from "../functions/define";
import { helpPageName } from "../functions/metadata";
import { functionPage } from "./function-page";
import { cautionsPage, indexPage } from "./index-page";
import { styleSheet } from "./style";

export const helpSite = (catalogue: readonly WorksheetFunction[]): Record<string, string> => ({
  "index.html": indexPage(catalogue),
  "cautions.html": cautionsPage(),
  "help.css": styleSheet,
  ...Object.fromEntries(catalogue.map((entry) => [helpPageName(entry.id), functionPage(entry)])),
});
