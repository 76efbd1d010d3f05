/** Notes as files hold them: the words in one part, and in another, older one the box they show in. */
import { cellName } from "../../sheet/cell-name";
import type { Note } from "../model";
import { namespaces } from "../package/names";
import { encodeString, escapeText } from "../xml/escape";
import { prefixed } from "../xml/tag";

export const emptyComments = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<comments xmlns="${namespaces.main}"><authors><author></author></authors><commentList></commentList></comments>`;

export function commentXml(prefix: string, author: number, { row, column, text }: Note): string {
  const [comment, body, words] = ["comment", "text", "t"].map((local) => prefixed(prefix, local));
  const written = escapeText(encodeString(text));
  return `<${comment} ref="${cellName(row, column)}" authorId="${String(author)}"><${body}><${words} xml:space="preserve">${written}</${words}></${body}></${comment}>`;
}

const boxNamespaces =
  'xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"';

/** `block` keeps the numbers of boxes apart from those of other sheets. */
export const emptyBoxes = (block: number): string =>
  `<xml ${boxNamespaces}><o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="${String(block)}"/></o:shapelayout><v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype></xml>`;

/** Numbers of boxes come in blocks of so many. */
export const boxesInBlock = 1024;

/** What a box must declare for itself in a part whose outermost element does not. */
export const ownNamespaces = (part: string): string =>
  part.includes(`<xml ${boxNamespaces}>`) ? "" : ` ${boxNamespaces}`;

/** A hidden box beside the cell, tall enough for its words. */
export function boxXml(number: number, { row, column, text }: Note, namespaces: string): string {
  const lines = Math.min(12, Math.max(4, Math.ceil(text.length / 22)));
  const anchor = [column + 1, 15, Math.max(0, row - 1), 10, column + 3, 31, row + lines, 4];
  return `<v:shape${namespaces} id="_x0000_s${String(number)}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox><x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor.join(", ")}</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${String(row)}</x:Row><x:Column>${String(column)}</x:Column></x:ClientData></v:shape>`;
}
