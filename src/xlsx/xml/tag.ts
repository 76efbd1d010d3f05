/** A tag's text with one attribute changed; every other character of it stays. */
import { escapeAttribute } from "./escape";

const attribute = /([^\s=/<>"']+)\s*=\s*("[^"]*"|'[^']*')/g;

/** The attributes of a tag: looked for after its name, so that each character is read once. */
function attributesOf(tag: string) {
  const looking = new RegExp(attribute);
  looking.lastIndex = tag.search(/[\s/>]/);
  return tag.matchAll(looking);
}

/**
 * Sets an attribute, or takes it away where the value is undefined. The tag is well-formed.
 * @example withAttribute('<row r="2">', "spans", "1:3") // '<row r="2" spans="1:3">'
 */
export function withAttribute(tag: string, name: string, value: string | undefined): string {
  for (const found of attributesOf(tag)) {
    if (found[1] !== name) continue;
    const end = found.index + found[0].length;
    if (value === undefined) return tag.slice(0, found.index).trimEnd() + tag.slice(end);
    return `${tag.slice(0, found.index)}${name}="${escapeAttribute(value)}"${tag.slice(end)}`;
  }
  if (value === undefined) return tag;
  const close = tag.endsWith("/>") ? tag.length - 2 : tag.length - 1;
  return `${tag.slice(0, close).trimEnd()} ${name}="${escapeAttribute(value)}"${tag.slice(close)}`;
}

/** A name with a prefix, where there is one. */
export const prefixed = (prefix: string, local: string): string =>
  prefix === "" ? local : `${prefix}:${local}`;
