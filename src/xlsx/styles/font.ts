/** A font with some of its properties changed, the rest as its owner wrote it. */
import type { LookChange } from "../patch/edits";
import { prefixed } from "../xml/tag";
import type { Node } from "../xml/tree";

/** The order in which the format lists them. */
const order =
  "b i strike condense extend outline shadow u vertAlign sz color name family charset scheme".split(
    " ",
  );

/** A colour as files write it, opaque: FF0B5B65. */
export const storedColour = (colour: string): string => `FF${colour.slice(1).toUpperCase()}`;

function changed(look: LookChange, prefix: string): Map<string, string> {
  const tag = (local: string, value: string) => `<${prefixed(prefix, local)}${value}/>`;
  const found = new Map<string, string>();
  const isOn = (local: string, wanted: boolean | undefined) => {
    if (wanted !== undefined) found.set(local, wanted ? tag(local, "") : "");
  };
  isOn("b", look.bold);
  isOn("i", look.italic);
  isOn("u", look.underlined);
  isOn("strike", look.struck);
  if (look.size !== undefined) found.set("sz", tag("sz", ` val="${String(look.size)}"`));
  if (look.colour === "none") found.set("color", "");
  else if (look.colour) found.set("color", tag("color", ` rgb="${storedColour(look.colour)}"`));
  return found;
}

/** Undefined when nothing of the look concerns the font. */
export function changedFont(
  text: string,
  font: Node | undefined,
  look: LookChange,
  prefix: string,
): string | undefined {
  const wanted = changed(look, prefix);
  if (wanted.size === 0) return undefined;
  const own = (font?.children ?? []).map((child) => child.local);
  const locals = [...order, ...own.filter((local) => !order.includes(local))];
  const parts = locals.map((local) => {
    const child = font?.children.find((each) => each.local === local);
    return wanted.get(local) ?? (child ? text.slice(child.start, child.end) : "");
  });
  const name = prefixed(prefix, "font");
  return `<${name}>${parts.join("")}</${name}>`;
}
