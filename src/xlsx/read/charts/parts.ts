/** What stands in many places of a chart's part: a value, a text, figures of cells (ECMA-376 part 1, 21.2). */
import type { ChartFigures, ChartText } from "../../file-chart";
import { limits } from "../../limits";
import { attribute } from "../../xml/scan";
import { childOf, childrenOf, descendants, type Node } from "../../xml/tree";

/** <c:orientation val="minMax"/> */
export const valueOf = (node: Node | undefined, name: string): string | undefined => {
  const child = childOf(node, name);
  return child && attribute(child, "val");
};

export function numberOf(node: Node | undefined, name: string): number | undefined {
  const written = valueOf(node, name);
  const number = written === undefined || written.trim() === "" ? NaN : Number(written);
  return Number.isFinite(number) ? number : undefined;
}

/** A yes or no; where the element stands without a value, it says yes. */
export function saysYes(node: Node | undefined, name: string, otherwise = false): boolean {
  const child = childOf(node, name);
  if (!child) return otherwise;
  const written = attribute(child, "val");
  return written === undefined || written === "1" || written === "true";
}

const point = (node: Node): readonly [place: number, text: string] => [
  Number(attribute(node, "idx") ?? NaN),
  childOf(node, "v")?.text ?? "",
];

const isFigure = (text: string): boolean => text.trim() !== "" && Number.isFinite(Number(text));

/** With holes where there is no point: one far out takes no room for those before it. */
function points(cache: Node | undefined, isText: boolean): (number | string | undefined)[] {
  const values: (number | string | undefined)[] = [];
  for (const [place, text] of childrenOf(cache, "pt").map(point)) {
    if (!Number.isInteger(place) || place < 0 || place >= limits.chartPoints) continue;
    if (isText) values[place] = text;
    else if (isFigure(text)) values[place] = Number(text);
  }
  return values;
}

const referred = (node: Node | undefined): { readonly refersTo?: string } => {
  const refersTo = childOf(node, "f")?.text.trim();
  return refersTo === undefined || refersTo === "" ? {} : { refersTo };
};

/** The innermost of several levels of categories. */
const innermost = (node: Node | undefined): Node | undefined => {
  const cache = childOf(node, "multiLvlStrCache");
  return childOf(cache, "lvl") ?? cache;
};

/** Figures or categories: of cells, or written into the part. */
export function figuresOf(node: Node | undefined): ChartFigures | undefined {
  const numbers = childOf(node, "numRef");
  const written = childOf(numbers, "numCache") ?? childOf(node, "numLit");
  if (numbers ?? written) {
    const format = childOf(written, "formatCode")?.text;
    return {
      ...referred(numbers),
      values: points(written, false),
      ...(format === undefined || format === "" ? {} : { format }),
    };
  }
  const levels = childOf(node, "multiLvlStrRef");
  const texts = childOf(node, "strRef") ?? levels;
  const cache = childOf(texts, "strCache") ?? childOf(node, "strLit") ?? innermost(levels);
  return texts || cache ? { ...referred(texts), values: points(cache, true) } : undefined;
}

const drawn = (node: Node): string =>
  descendants(node, "p")
    .map((line) =>
      descendants(line, "t")
        .map(({ text }) => text)
        .join(""),
    )
    .join(" ")
    .trim();

/** A title, or the name of a series: written, or of a cell. */
export function textOf(node: Node | undefined): ChartText | undefined {
  const text = childOf(node, "tx") ?? node;
  const rich = childOf(text, "rich");
  if (rich) return { text: drawn(rich) };
  const direct = childOf(text, "v");
  if (direct) return { text: direct.text };
  const cell = childOf(text, "strRef");
  if (!cell) return undefined;
  const words = points(childOf(cell, "strCache"), true).filter((word) => word !== undefined);
  return { text: words.join(" "), ...referred(cell) };
}
