/**
 * The old kind of drawing part: the boxes of notes, which go by the cell of their note, and controls, which
 * go by the cells they stand over. It need not be well-formed, so each shape is taken as a text.
 */
import type { Package } from "../../../package/package";
import { movedEnds } from "../anchors";
import type { Lines } from "../lines";

const shape = /<((?:\w+:)?shape)[\s>][\s\S]*?<\/\1>/g;

/** The text of a mark of a shape, whatever prefix it has. */
const marked = (name: string): RegExp =>
  new RegExp(`(<(\\w+:)?${name}>)([^<]*)(</(?:\\w+:)?${name}>)`);

const numberIn = (text: string, name: string): number | undefined => {
  const found = marked(name).exec(text)?.[3];
  return found === undefined || !/^\s*\d+\s*$/.test(found) ? undefined : Number(found);
};

const withMark = (text: string, name: string, now: string): string =>
  text.replace(marked(name), (_, open: string, _prefix, _old, close: string) => open + now + close);

/** Left column and its offset, top row and its, then right and bottom. */
function withAnchor(
  text: string,
  move: (first: number, last: number) => readonly [number, number],
  lines: Lines,
) {
  const numbers = (marked("Anchor").exec(text)?.[3] ?? "").split(",").map(Number);
  if (numbers.length !== 8 || numbers.some((each) => !Number.isFinite(each))) return text;
  const [from, to] = lines.axis === "row" ? [2, 6] : [0, 4];
  const [first, last] = move(numbers[from] ?? 0, numbers[to] ?? 0);
  const now = numbers.map((each, index) => (index === from ? first : index === to ? last : each));
  return withMark(text, "Anchor", now.join(", "));
}

function movedShape(text: string, lines: Lines): string {
  const name = lines.axis === "row" ? "Row" : "Column";
  const isNote = /ObjectType=["']Note["']/.test(text);
  if (!isNote)
    return withAnchor(text, (first, last) => movedEnds(first, last, lines, "twoCell"), lines);
  const line = numberIn(text, name);
  if (line === undefined) return text;
  const now = lines.line(line);
  if (now === undefined) return "";
  const by = (each: number): number => Math.max(0, each + now - line);
  return withAnchor(
    withMark(text, name, String(now)),
    (first, last) => [by(first), by(last)],
    lines,
  );
}

export function moveBoxes(file: Package, part: string, lines: Lines): void {
  const text = file.need(part);
  const now = text.replace(shape, (each) => {
    const moved = /ClientData/.test(each) ? movedShape(each, lines) : each;
    return moved;
  });
  if (now !== text) file.set(part, now);
}
