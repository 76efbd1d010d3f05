/** Where charts lie on the drawn sheet, which scrolls, is enlarged, and has rows and columns that stay. */
import type { ChartAnchor, ChartCorner } from "../../xlsx/file-chart";

/** Pixels of the sheet from its first cell, as it is when it is not enlarged. */
export interface Rect {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Where the lines between rows and columns are, in pixels of the sheet. */
export interface Lines {
  readonly left: (column: number) => number;
  readonly top: (row: number) => number;
}

const least = 24;

/** A corner does not leave its cell: a file may have been made where that was wider. */
const within = (offset: number, from: number, to: number): number =>
  from + Math.min(offset, Math.max(0, to - from));

const pointAt = ({ row, column, x, y }: ChartCorner, { left, top }: Lines) => ({
  x: within(x, left(column), left(column + 1)),
  y: within(y, top(row), top(row + 1)),
});

export function rectOf({ from, to, size }: ChartAnchor, lines: Lines): Rect {
  // of a chart that hangs on no cell, the first cell is no bound
  const isFree = from.row === 0 && from.column === 0 && size !== undefined;
  const start = isFree ? { x: from.x, y: from.y } : pointAt(from, lines);
  const end = to && pointAt(to, lines);
  const width = end ? end.x - start.x : (size?.width ?? 0);
  const height = end ? end.y - start.y : (size?.height ?? 0);
  return { left: start.x, top: start.y, width: Math.max(0, width), height: Math.max(0, height) };
}

/** All its rows, or all its columns, are hidden. */
export const isGone = ({ width, height }: Rect): boolean => width < least || height < least;

/** The drawn sheet. Lengths in its own pixels, but for width and height, which are those of the screen. */
export interface Geometry {
  readonly zoom: number;
  readonly headerWidth: number;
  readonly headerHeight: number;
  readonly scrollX: number;
  readonly scrollY: number;
  readonly frozenLeft: number;
  readonly frozenWidth: number;
  readonly frozenTop: number;
  readonly frozenHeight: number;
  readonly width: number;
  readonly height: number;
}

/** A part of the screen in which the sheet is moved alike. */
export interface Pane {
  readonly name: string;
  readonly clip: Rect;
  /** What of the sheet is seen there. */
  readonly seen: Rect;
  /** Where the sheet's first cell stands, from the pane's corner, in pixels of the screen. */
  readonly x: number;
  readonly y: number;
}

interface Stretch {
  readonly isFrozen: boolean;
  /** Of the screen. */
  readonly start: number;
  readonly end: number;
  readonly origin: number;
}

/** The parts of one direction: what is frozen, if anything is, and what scrolls. */
function stretches(
  zoom: number,
  header: number,
  scroll: number,
  [frozenFrom, frozen]: readonly [number, number],
  end: number,
): Stretch[] {
  const line = Math.min(end, (header + frozen) * zoom);
  const scrolled = {
    isFrozen: false,
    start: line,
    end,
    origin: (header - scroll) * zoom,
  };
  if (frozen <= 0) return [scrolled];
  const origin = (header - frozenFrom) * zoom;
  return [{ isFrozen: true, start: header * zoom, end: line, origin }, scrolled];
}

export function panesOf(geometry: Geometry): Pane[] {
  const { zoom, headerWidth, headerHeight, scrollX, scrollY, width, height } = geometry;
  const across = stretches(
    zoom,
    headerWidth,
    scrollX,
    [geometry.frozenLeft, geometry.frozenWidth],
    width,
  );
  const down = stretches(
    zoom,
    headerHeight,
    scrollY,
    [geometry.frozenTop, geometry.frozenHeight],
    height,
  );
  return down.flatMap((y) =>
    across.map((x) => ({
      name: `${y.isFrozen ? "frozen" : "moving"}-${x.isFrozen ? "frozen" : "moving"}`,
      clip: {
        left: x.start,
        top: y.start,
        width: Math.max(0, x.end - x.start),
        height: Math.max(0, y.end - y.start),
      },
      seen: {
        left: (x.start - x.origin) / zoom,
        top: (y.start - y.origin) / zoom,
        width: Math.max(0, x.end - x.start) / zoom,
        height: Math.max(0, y.end - y.start) / zoom,
      },
      x: x.origin - x.start,
      y: y.origin - y.start,
    })),
  );
}

export const meets = (a: Rect, b: Rect): boolean =>
  a.left < b.left + b.width &&
  b.left < a.left + a.width &&
  a.top < b.top + b.height &&
  b.top < a.top + a.height;
