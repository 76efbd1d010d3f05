/** The titles of the sheets among the properties of a file: programs show them without opening it. */
import type { Package } from "../../package/package";
import { relationshipsOf } from "../../package/relationships";
import { readWorkbookPart } from "../../read/workbook-part";
import { type Replacement, splice } from "../../../sheet/formula/splice";
import { escapeText } from "../../xml/escape";
import { childOf, descendants, readTree } from "../../xml/tree";

const isProperties = /\/extended-properties$/i;

/** Where sheets are not all of one kind, nothing is said of them. */
export function retitle(file: Package): void {
  const part = relationshipsOf(file, "").find(({ type }) => isProperties.test(type))?.target;
  const text = part === undefined ? undefined : file.text(part);
  if (part === undefined || text === undefined) return;
  const root = readTree(part, text);
  const pairs = childOf(root, "HeadingPairs");
  const titles = childOf(root, "TitlesOfParts");
  if (!pairs || !titles) return;
  const { sheets } = readWorkbookPart(file);
  const vector = titles.children[0];
  const first = pairs.children[0];
  const heading = first && descendants(first, "lpstr")[0];
  const isPlain = sheets.every(({ kind }) => kind === "cells");
  const vt = vector?.prefix ? `${vector.prefix}:` : "";
  const vectorOf = (base: string, size: number, items: string) =>
    `<${vt}vector size="${String(size)}" baseType="${base}">${items}</${vt}vector>`;
  const string = (value: string) => `<${vt}lpstr>${escapeText(value)}</${vt}lpstr>`;
  const variant = (value: string) => `<${vt}variant>${value}</${vt}variant>`;
  const put = ({ start, end }: { start: number; end: number }, now: string): Replacement => ({
    start,
    end,
    text: now,
  });
  const changes =
    vector && first && heading && isPlain
      ? [
          put(
            first,
            vectorOf(
              "variant",
              2,
              variant(string(heading.text)) +
                variant(`<${vt}i4>${String(sheets.length)}</${vt}i4>`),
            ),
          ),
          put(
            vector,
            vectorOf("lpstr", sheets.length, sheets.map(({ name }) => string(name)).join("")),
          ),
        ]
      : [put(pairs, ""), put(titles, "")];
  file.set(part, splice(text, changes));
}
