/** What can be found: every page and every heading, from the pages as they are built. */

export interface Entry {
  /** acidvalue.html, or glossary.html#blank. */
  readonly address: string;
  /** Where it stands: the title of its page. */
  readonly page: string;
  readonly title: string;
  /** What is said there, as plain text; searched, and shown in part. */
  readonly says: string;
}

/** Longer texts would make the search page large for little. */
const mostCharacters = 600;

/** What of an entry is on the search page, and so can be found. */
export const searchable = ({ page, title, says }: Entry): { title: string; says: string } => ({
  title,
  says: `${title === page ? "" : page} ${says.slice(0, mostCharacters)}`,
});

const plain = (html: string): string =>
  html
    .replace(/<(?:thead|h1)\b[^]*?<\/(?:thead|h1)>/g, " ")
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&nbsp;", " ")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ")
    .trim();

const between = (html: string, start: string, end: string): string => {
  const from = html.indexOf(start);
  const to = html.indexOf(end, from);
  return from < 0 || to < 0 ? "" : html.slice(from + start.length, to);
};

/** Where something with an address of its own begins: a heading, or a word of the glossary. */
const beginnings = /(?=<(?:h2|tr) id=")/;
const head = /^<(?:h2 id="([^"]+)">([^]*?)<\/h2>|tr id="([^"]+)"><td>([^]*?)<\/td>)/;

/** The page itself, then whatever on it has an address of its own. */
export function entriesOf(address: string, html: string): Entry[] {
  const main = between(html, "<main>", "</main>");
  const page = plain(between(main, "<h1>", "</h1>"));
  return main.split(beginnings).map((piece) => {
    const [whole = "", heading, words, row, name] = head.exec(piece) ?? [];
    const id = heading ?? row;
    return {
      address: id === undefined ? address : `${address}#${id}`,
      page,
      title: id === undefined ? page : plain(words ?? name ?? ""),
      says: plain(piece.slice(whole.length)),
    };
  });
}
