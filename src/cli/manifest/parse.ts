/** A manifest as a small tree of elements that know their line. */
import { SaxesParser } from "saxes";

export interface Element {
  /** As written, prefix and all: bt:Url. */
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Element[];
  readonly text: string;
  readonly line: number;
}

interface Growing extends Element {
  readonly children: Growing[];
  text: string;
}

/** Throws, with line and column, where the text is no well-formed XML. */
export function parseManifest(xml: string): Element {
  const parser = new SaxesParser();
  const open: Growing[] = [];
  let root: Element | undefined;
  parser.on("opentag", ({ name, attributes }) => {
    const element: Growing = { name, attributes, children: [], text: "", line: parser.line };
    open.at(-1)?.children.push(element);
    open.push(element);
    root ??= element;
  });
  parser.on("text", (text) => {
    const around = open.at(-1);
    if (around) around.text += text;
  });
  parser.on("closetag", () => {
    open.pop();
  });
  parser.write(xml).close();
  if (!root) throw new Error("there is no element in it");
  return root;
}

/** An element and everything in it, in the order it is written. */
export function* within(element: Element): Generator<Element> {
  yield element;
  for (const child of element.children) yield* within(child);
}

export const named = (root: Element, name: string): Element[] =>
  [...within(root)].filter((element) => element.name === name);
