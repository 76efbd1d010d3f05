/** The frame every help page stands in, and the little HTML they need. */

/** Text, safe inside HTML. */
export const text = (raw: string): string =>
  raw
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");

/** A formula or a name, set as one types it; where it must be broken, it breaks behind a comma or a bracket. */
export const code = (raw: string): string =>
  `<code>${text(raw).replace(/[(,]/g, "$&<wbr>")}</code>`;

export const list = (items: readonly string[]): string =>
  `<ul>${items.map((item) => `<li>${item}</li>`).join("")}</ul>`;

/** What every table stands in, so that a wide one can be moved sideways by keyboard too. */
export const framed = (
  { kind, called }: { readonly kind: string; readonly called: string },
  head: readonly string[],
  rows: readonly string[],
): string => `
<div class="${kind}" role="group" aria-label="${called}" tabindex="0"><table>
<thead><tr>${head.map((cell) => `<th scope="col">${text(cell)}</th>`).join("")}</tr></thead>
<tbody>${rows.join("\n")}</tbody>
</table></div>`;

export const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  framed(
    { kind: "wide", called: "Table" },
    head,
    rows.map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join("")}</tr>`),
  );

/** A table of words: on a narrow page each row stands as a block, each cell under its heading's name. */
export function listing(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cell = (said: string, column: number): string =>
    `<td data-head="${text(head[column] ?? "")}">${said}</td>`;
  return framed(
    { kind: "wide listing", called: "Table" },
    head,
    rows.map((row) => `<tr>${row.map(cell).join("")}</tr>`),
  );
}

/** Everything inside <main> is given; the frame adds title, way home and style. */
export const page = (title: string, main: string): string => `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'">
<title>${text(title)} - Titrebook</title>
<link rel="icon" href="../icons/icon-32.png">
<link rel="stylesheet" href="help.css">
</head>
<body>
<header><a href="index.html">Titrebook help</a> <a href="search.html">Search</a> <a href="glossary.html">Glossary</a></header>
<main>
${main}
</main>
</body>
</html>
`;
