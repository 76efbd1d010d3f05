/** The first page of the help site: what there is, and how a cell says that something is missing. */
import type { WorksheetFunction } from "../functions/define";
import { helpPageName } from "../functions/metadata";
import { aboutCautions, cautions } from "../core/batch/cautions";
import { signature } from "./function-page";
import { guides } from "./guides";
import { inline } from "./inline";
import { code, list, listing, page, text } from "./page";

export const indexPage = (catalogue: readonly WorksheetFunction[]): string =>
  page(
    "Help",
    `
<h1>Titrebook help</h1>
<p class="lead">From bench readings to the grams of catalyst and litres of methanol for the batch in hand.</p>
<h2>Guides</h2>
${list(guides.map(({ file, title, lead }) => `<a href="${file}">${text(title)}</a>: ${inline(lead)}`))}
<h2>Worksheet functions</h2>
${listing(
  ["Function", "What it gives", "In"],
  catalogue.map((entry) => [
    `<a href="${helpPageName(entry.id)}">${code(signature(entry))}</a>`,
    text(entry.summary),
    text(entry.result),
  ]),
)}
<h2>What cells may hold</h2>
${list([
  "An empty cell, and a 0, mean <em>not filled in</em>: ignored in a range, the default where an argument is optional, and #N/A where something is still missing. A temperature of exactly 0 C is typed as 0.01.",
  "#N/A means that something is not there yet. #VALUE! means that something is wrong. Both carry a sentence: click the mark beside the cell, or select the cell and read the pane.",
  "Percent is percent: 1.97 means 1.97 %, and an assay of ninety percent is 90.",
  "Text is never read as a number: 2,35 typed into a program that expects 2.35 is refused, not guessed.",
])}
<p><a href="cautions.html">Cautions</a> · <a href="search.html">Search</a></p>`,
  );

export const cautionsPage = (): string =>
  page("Cautions", `<h1>Cautions</h1>${list(cautions.map(text))}<p>${text(aboutCautions)}</p>`);
