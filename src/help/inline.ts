/** The little that a text of a guide may hold: `code`, **strong words**, _names of buttons_, [links](x.html). */
import { code, text } from "./page";

const outsideCode = (said: string): string =>
  text(said)
    .replace(/\*\*([^*]+)\*\*/g, "<strong>$1</strong>")
    .replace(/(^|[\s("])_([^_]+)_(?=[\s.,:;)"]|$)/g, "$1<em>$2</em>")
    .replace(/\[([^\]]+)\]\(([a-z0-9./#-]+)\)/g, '<a href="$2">$1</a>');

export const inline = (said: string): string =>
  said
    .split("`")
    .map((piece, index) => (index % 2 === 1 ? code(piece) : outsideCode(piece)))
    .join("");
