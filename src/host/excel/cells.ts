/** A block of cells as the spreadsheet program's own calls: as few as say it. */
import type { Block, Content, Style } from "../../sheet/port";
import { rangeOf } from "./ranges";

/** The look of each style: ink, ground, bold. */
const looks: Record<Style, { color: string; fill?: string; bold?: boolean; size?: number }> = {
  title: { color: "#12343b", bold: true },
  heading: { color: "#ffffff", fill: "#0b5b65", bold: true },
  input: { color: "#14303a", fill: "#fff8e1" },
  calculated: { color: "#14303a", fill: "#dfeaea" },
  words: { color: "#14303a" },
  caution: { color: "#7a2e0e" },
  large: { color: "#14303a", bold: true, size: 22 },
};

/** A text stays a text behind an apostrophe, which the program takes off again. */
const asTyped = (value: string | number | boolean): string | number | boolean =>
  typeof value === "string" && value !== "" ? `'${value}` : value;

function setLook(range: Excel.Range, style: Style): void {
  const { color, fill, bold, size } = looks[style];
  range.format.font.color = color;
  range.format.font.bold = bold ?? false;
  if (fill !== undefined) range.format.fill.color = fill;
  if (size !== undefined) range.format.font.size = size;
}

/** null leaves a cell as it is. */
const typedInto = (content: Content): string | number | boolean | null => {
  if (content.kind === "keep") return null;
  return content.kind === "formula" ? content.formula : asTyped(content.value);
};
const formatOf = (content: Content): string | null =>
  content.kind === "keep" ? null : (content.format ?? null);
const styleOf = (content: Content): Style | undefined =>
  content.kind === "keep" ? undefined : content.style;

interface Patch {
  readonly column: number;
  readonly columns: number;
  readonly style: Style;
}

/** Cells beside one another that look alike. */
function patchesOf(contents: readonly Content[]): Patch[] {
  const found: Patch[] = [];
  for (const [column, content] of contents.entries()) {
    const style = styleOf(content);
    if (style === undefined) continue;
    const last = found.at(-1);
    const goesOn = last?.style === style && last.column + last.columns === column;
    if (goesOn) found[found.length - 1] = { ...last, columns: last.columns + 1 };
    else found.push({ column, columns: 1, style });
  }
  return found;
}

/** Rows under one another that look alike get their looks together. */
function setLooks(
  range: (row: number, column: number, rows: number, columns: number) => Excel.Range,
  contents: readonly (readonly Content[])[],
): void {
  const patches = contents.map(patchesOf);
  const isAlike = (one: number, other: number): boolean =>
    JSON.stringify(patches[one]) === JSON.stringify(patches[other]);
  for (let row = 0, end = 0; row < contents.length; row = end) {
    for (end = row + 1; end < contents.length && isAlike(row, end);) end += 1;
    for (const { column, columns, style } of patches[row] ?? []) {
      setLook(range(row, column, end - row, columns), style);
    }
  }
}

const isAll = <T>(lines: readonly (readonly (T | null)[])[]): boolean =>
  lines.every((line) => line.every((each) => each === null));

export function setCells(
  context: Excel.RequestContext,
  block: Block,
  contents: readonly (readonly Content[])[],
): void {
  const whole = rangeOf(context, block);
  const formats = contents.map((row) => row.map(formatOf));
  const typed = contents.map((row) => row.map(typedInto));
  // the format first: what is typed is read by it
  if (!isAll(formats)) whole.numberFormat = formats;
  if (!isAll(typed)) whole.formulas = typed;
  setLooks(
    (row, column, rows, columns) =>
      rangeOf(context, {
        sheet: block.sheet,
        row: block.row + row,
        column: block.column + column,
        rows,
        columns,
      }),
    contents,
  );
}
