/** Every file of the help site, by name. The build writes them; the tests read them. */
import type { WorksheetFunction } from "../functions/define";
import { helpPageName } from "../functions/metadata";
import { entriesOf } from "./contents";
import { functionPage } from "./function-page";
import { guidePage } from "./guide-page";
import { guides } from "./guides";
import { cautionsPage, indexPage } from "./index-page";
import { searchPage } from "./search-page";
import { styleSheet } from "./style";

export function helpSite(catalogue: readonly WorksheetFunction[]): Record<string, string> {
  const pages: Record<string, string> = {
    ...Object.fromEntries(guides.map((guide) => [guide.file, guidePage(guide)])),
    "cautions.html": cautionsPage(),
    ...Object.fromEntries(catalogue.map((entry) => [helpPageName(entry.id), functionPage(entry)])),
  };
  const entries = Object.entries(pages).flatMap(([name, html]) => entriesOf(name, html));
  return {
    "index.html": indexPage(catalogue),
    ...pages,
    "search.html": searchPage(entries),
    "help.css": styleSheet,
  };
}
