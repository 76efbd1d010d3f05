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

/** The reader's errors say "line:column: why". */
const whyBroken = (thrown: unknown): string =>
  thrown instanceof Error ? thrown.message.replace(/^\d+:\d+: /, "").trim() : "it cannot be read";

/** What stands before the outermost element: refused where it is not what a workbook's part has there. */
function refuseProlog(part: string, prolog: string, encoding = "UTF-8"): void {
  if (/<!doctype/i.test(prolog)) refuse({ code: "declares-entities", part });
  if (!/^utf-?8$/i.test(encoding)) refuse({ code: "other-encoding", part, encoding });
}

export function scanXml(part: string, text: string, listener: Listener): void {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const open: OpenTag[] = [];
  /** What is thrown while the listener is told something is not about the XML. */
  let isTelling = false;
  const told = (tell: () => void) => {
    isTelling = true;
    tell();
    isTelling = false;
  };
  parser.on("opentag", ({ local, prefix, uri, attributes, isSelfClosing }) => {
    const openEnd = parser.position;
    const start = text.lastIndexOf("<", openEnd - 1);
    const tag = { local, prefix, uri, attributes, start, openEnd, isEmptyTag: isSelfClosing };
    open.push(tag);
    told(() => {
      if (open.length === 1) refuseProlog(part, text.slice(0, start), parser.xmlDecl.encoding);
      if (open.length > limits.depth) {
        refuse({ code: "damaged", part, detail: "it is nested too deeply" });
      }
      listener.open(tag, open.length);
    });
  });
  parser.on("closetag", () => {
    const tag = open.pop() as OpenTag;
    const end = parser.position;
    const closeStart = tag.isEmptyTag ? end : text.lastIndexOf("<", end - 1);
    told(() => {
      listener.close(tag, open.length + 1, closeStart, end);
    });
  });
  const heard = (found: string) => {
    told(() => {
      listener.text(found);
    });
  };
  parser.on("text", heard);
  // A fourth handler makes the parser four times as slow (its object falls out of the engine's fast
  // form), and hardly any part needs this one.
  if (text.includes("<![CDATA[")) parser.on("cdata", heard);
  try {
    parser.write(text).close();
  } catch (thrown) {
    if (isTelling) throw thrown;
    refuse({ code: "damaged", part, detail: whyBroken(thrown) });
  }
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
