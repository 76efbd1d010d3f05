/**
 * Reads the XML of one part in one pass and tells what it meets, with exact places, so that a patch
 * can cut the original text there. The reading, and all well-formedness, is saxes'. A part that is
 * not well-formed, declares a document type, or nests without end is refused.
 */
import { SaxesParser, type SaxesTagNS } from "saxes";
import { limits } from "../limits";
import { refuse } from "../problem";

export interface OpenTag {
  /** Name without prefix. */
  readonly local: string;
  /** "" or "x". */
  readonly prefix: string;
  /** Its namespace. */
  readonly uri: string;
  readonly attributes: SaxesTagNS["attributes"];
  /** Of its "<". */
  readonly start: number;
  /** After its ">". */
  readonly openEnd: number;
  readonly isEmptyTag: boolean;
}

export interface Listener {
  /** `depth` is 1 for the outermost element. */
  open(tag: OpenTag, depth: number): void;
  /** `closeStart` is where "</" stands; an empty tag's end is both. */
  close(tag: OpenTag, depth: number, closeStart: number, end: number): void;
  text(text: string): void;
}

const whyBroken = (error: Error): string => error.message.replace(/^\d+:\d+: /, "").trim();

export function scanXml(part: string, text: string, listener: Listener): void {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const open: OpenTag[] = [];
  parser.on("error", (error) => refuse({ code: "damaged", part, detail: whyBroken(error) }));
  parser.on("doctype", () => refuse({ code: "declares-entities", part }));
  parser.on("xmldecl", ({ encoding = "UTF-8" }) => {
    if (!/^utf-?8$/i.test(encoding)) refuse({ code: "other-encoding", part, encoding });
  });
  parser.on("opentag", ({ local, prefix, uri, attributes, isSelfClosing }) => {
    const openEnd = parser.position;
    const start = text.lastIndexOf("<", openEnd - 1);
    const tag = { local, prefix, uri, attributes, start, openEnd, isEmptyTag: isSelfClosing };
    open.push(tag);
    if (open.length > limits.depth) {
      refuse({ code: "damaged", part, detail: "it is nested too deeply" });
    }
    listener.open(tag, open.length);
  });
  parser.on("closetag", () => {
    const tag = open.pop() as OpenTag;
    const end = parser.position;
    const closeStart = tag.isEmptyTag ? end : text.lastIndexOf("<", end - 1);
    listener.close(tag, open.length + 1, closeStart, end);
  });
  parser.on("text", (found) => {
    listener.text(found);
  });
  parser.on("cdata", (found) => {
    listener.text(found);
  });
  parser.write(text).close();
}

/** The value of an attribute without prefix. */
export const attribute = ({ attributes }: Pick<OpenTag, "attributes">, name: string) =>
  attributes[name]?.value;

/** The value of an attribute of another namespace: r:id. */
export const attributeOf = (
  { attributes }: Pick<OpenTag, "attributes">,
  uri: string,
  local: string,
): string | undefined =>
  Object.values(attributes).find((found) => found.uri === uri && found.local === local)?.value;

/** A whole number an attribute gives; a default where there is none or it is not one. */
export function count(tag: Pick<OpenTag, "attributes">, name: string, otherwise = 0): number {
  const written = attribute(tag, name);
  return written !== undefined && /^\d{1,10}$/.test(written) ? Number(written) : otherwise;
}

/** A yes or no an attribute gives. */
export function flag(tag: Pick<OpenTag, "attributes">, name: string, otherwise = false): boolean {
  const written = attribute(tag, name);
  return written === undefined ? otherwise : written === "1" || written === "true";
}
