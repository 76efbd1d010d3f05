/** How a cell of a file looks, in the embedded spreadsheet's own words. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { Look } from "../../xlsx";

const across: ReadonlyMap<string | undefined, HorizontalAlign> = new Map([
  ["left", HorizontalAlign.LEFT],
  ["center", HorizontalAlign.CENTER],
  ["centerContinuous", HorizontalAlign.CENTER],
  ["right", HorizontalAlign.RIGHT],
  ["justify", HorizontalAlign.JUSTIFIED],
]);

const down: ReadonlyMap<string | undefined, VerticalAlign> = new Map([
  ["top", VerticalAlign.TOP],
  ["center", VerticalAlign.MIDDLE],
]);

/** What a file calls a line of the grid. */
export const lineName = (line: BorderStyleTypes | undefined): string =>
  [...lines].find(([, each]) => each === line)?.[0] ?? "thin";

const lines: ReadonlyMap<string | undefined, BorderStyleTypes> = new Map([
  ["thin", BorderStyleTypes.THIN],
  ["hair", BorderStyleTypes.HAIR],
  ["dotted", BorderStyleTypes.DOTTED],
  ["dashed", BorderStyleTypes.DASHED],
  ["dashDot", BorderStyleTypes.DASH_DOT],
  ["double", BorderStyleTypes.DOUBLE],
  ["medium", BorderStyleTypes.MEDIUM],
  ["mediumDashed", BorderStyleTypes.MEDIUM_DASHED],
  ["thick", BorderStyleTypes.THICK],
]);

const edges = { top: "t", bottom: "b", left: "l", right: "r" } as const;

function borders(look: Look): IBorderData {
  const found: IBorderData = {};
  for (const [side, edge] of Object.entries(edges)) {
    const border = look.borders?.[side as keyof typeof edges];
    if (!border) continue;
    found[edge] = {
      s: lines.get(border.line) ?? BorderStyleTypes.THIN,
      cl: { rgb: border.colour ?? "#000000" },
    };
  }
  return found;
}

const on = BooleanNumber.TRUE;

/** Points of letters where the file does not say. */
export const usualSize = 11;

/** Room around a text, and what one letter of an indent adds to it, in pixels. */
const padding = { t: 0, b: 2, l: 2, r: 2 };
const indentPixels = 9;
/** Below words on a ground of their own, whose tails the line below would cut. */
const belowHeading = 5;

function paddingOf({ indent = 0, horizontal, vertical, fill }: Look): Pick<IStyleData, "pd"> {
  const left = horizontal === "left" ? indent * indentPixels : 0;
  const isHeading = fill !== undefined && !down.has(vertical);
  if (left === 0 && !isHeading) return {};
  const below = isHeading ? belowHeading : padding.b;
  return { pd: { ...padding, l: padding.l + left, b: below } };
}

/** A style of the grid that remembers which look of the file it began as. */
export type FileStyle = IStyleData & { readonly look?: number };

/** Which look of the file a cell's style began as; undefined where the grid made it. */
export const lookBehind = (style: FileStyle | undefined): number | undefined => style?.look;

export function styleOf(look: Look): IStyleData {
  const horizontal = across.get(look.horizontal);
  return {
    fs: look.size ?? usualSize,
    vt: down.get(look.vertical) ?? VerticalAlign.BOTTOM,
    ...(look.format === "General" ? {} : { n: { pattern: look.format } }),
    ...(look.bold ? { bl: on } : {}),
    ...(look.italic ? { it: on } : {}),
    ...(look.underlined ? { ul: { s: on } } : {}),
    ...(look.struck ? { st: { s: on } } : {}),
    ...(look.colour ? { cl: { rgb: look.colour } } : {}),
    ...(look.fill ? { bg: { rgb: look.fill } } : {}),
    ...(look.wraps ? { tb: WrapStrategy.WRAP } : {}),
    ...(horizontal === undefined ? {} : { ht: horizontal }),
    ...paddingOf(look),
    ...(look.borders ? { bd: borders(look) } : {}),
  };
}

const mark = "look-";

/** What a look is called among the styles of the grid. */
export const styleName = (look: number): string => `${mark}${String(look)}`;
