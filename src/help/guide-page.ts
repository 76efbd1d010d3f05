/** A guide as a page. */
import { aboutCautions, cautions, cautionsFor } from "../core/batch/cautions";
import type { Figure, Guide, Mistake, Part, Worked } from "./guides/guide";
import { inline } from "./inline";
import { code, framed, list, listing, page, table, text } from "./page";

/** An address for a heading, so that the search can lead to it. */
const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

const word = ([name, also, meaning]: readonly [string, string, string]): string =>
  `<tr id="${anchor(name)}"><td>${text(name)}</td><td>${text(also)}</td><td>${inline(meaning)}</td></tr>`;

const words = (all: readonly (readonly [string, string, string])[]): string =>
  framed(
    { kind: "wide words", called: "Words" },
    ["Word", "Also called", "Meaning"],
    all.map(word),
  );

/** A sentence cannot be worked out by hand: where all are, there is no such column. */
function worked(rows: readonly Worked[]): string {
  const isByHand = rows.some(({ byHand }) => byHand !== "");
  return listing(
    ["In a cell", "Gives", ...(isByHand ? ["By hand"] : [])],
    rows.map(({ formula, shows, unit, byHand }) => [
      code(formula),
      text(`${shows} ${unit}`.trim()),
      ...(isByHand ? [text(byHand)] : []),
    ]),
  );
}

const figure = ({ formula, shows, unit, byHand }: Figure): string =>
  [
    ...(formula === undefined ? [] : [code(formula)]),
    `<strong>${text(`${shows} ${unit}`.trim())}</strong>`,
    ...(byHand === undefined ? [] : [text(`= ${byHand}`)]),
  ].join("<br>");

const mistake = (each: Mistake): string => `
<h2 id="${anchor(each.title)}">${text(each.title)}</h2>
<div class="beside">
<div><h3>Wrong</h3><p>${inline(each.wrong)}</p><p>${figure(each.wrongFigure)}</p></div>
<div><h3>Right</h3><p>${inline(each.right)}</p><p>${figure(each.rightFigure)}</p></div>
</div>
<p>What it costs: ${inline(each.costs)}</p>`;

function partOf(part: Part): string {
  switch (part.kind) {
    case "heading":
      return `<h2 id="${anchor(part.text)}">${text(part.text)}</h2>`;
    case "text":
      return `<p>${inline(part.text)}</p>`;
    case "steps":
      return `<ol>${part.items.map((item) => `<li>${inline(item)}</li>`).join("")}</ol>`;
    case "points":
      return list(part.items.map(inline));
    case "worked":
      return worked(part.rows);
    case "block":
      return `<pre>${part.lines.map(text).join("\n")}</pre>`;
    case "table":
      return table(
        part.head,
        part.rows.map((row) => row.map(inline)),
      );
    case "picture":
      return `<figure><img src="${part.file}" alt="${text(part.says)}"><figcaption>${text(part.says)}</figcaption></figure>`;
    case "mistakes":
      return part.mistakes.map(mistake).join("\n");
    case "words":
      return words(part.words);
    case "cautions":
      return part.work === undefined
        ? `${list(cautions.map(text))}<p>${text(aboutCautions)}</p>`
        : `${list(cautionsFor(part.work).map(text))}<p><a href="cautions.html">All ${String(cautions.length)} cautions</a></p>`;
  }
}

export const guidePage = ({ title, lead, parts }: Guide): string =>
  page(
    title,
    `<h1>${text(title)}</h1>\n<p class="lead">${inline(lead)}</p>\n${parts.map(partOf).join("\n")}`,
  );
