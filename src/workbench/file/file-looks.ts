/** Which look of the file a style of the grid is: it may have come to a cell as a style of its own. */
import type { IStyleData } from "@univerjs/core";
import { type FileStyle, lookBehind, styleName } from "./file-style";

/** One text for what looks the same, in whatever order it is written. */
function written(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "";
  const entries = Object.entries(value)
    .filter(([key, each]) => key !== "look" && each !== undefined && each !== null)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, each]) => `${key}:${written(each)}`).join()}}`;
}

/** @param styleCalled a style by its name in the grid */
export function lookFinder(
  styleCalled: (name: string) => IStyleData | undefined,
): (style: FileStyle | undefined) => number | undefined {
  const looks = new Map<string, number>();
  for (let look = 0; ; look += 1) {
    const style = styleCalled(styleName(look));
    if (!style) break;
    const text = written(style);
    if (!looks.has(text)) looks.set(text, look);
  }
  const known = new Map<FileStyle, number | undefined>();
  return (style) => {
    const own = lookBehind(style);
    if (!style || looks.size === 0 || own !== undefined) return own;
    if (!known.has(style)) known.set(style, looks.get(written(style)));
    return known.get(style);
  };
}
