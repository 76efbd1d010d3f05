/** Series as paths: what lies closer together than a pixel is drawn once. */
import type { ChartPicture } from "../../../xlsx/file-chart";
import { place } from "./drawing";
import { markPath } from "./marks";

export type At = readonly [x: number, y: number];

/** More marks than that are a smear. */
const mostMarks = 2000;

/** Of points one after another in the same column of pixels: first, lowest, highest, last. */
function thinned(points: readonly At[]): At[] {
  const kept: At[] = [];
  let run: At[] = [];
  const close = () => {
    if (run.length <= 4) kept.push(...run);
    else {
      const ends = [0, run.length - 1];
      let [low, high] = [0, 0];
      run.forEach(([, y], index) => {
        if (y < (run[low]?.[1] ?? y)) low = index;
        if (y > (run[high]?.[1] ?? y)) high = index;
      });
      const chosen = [...new Set([...ends, low, high])].sort((a, b) => a - b);
      kept.push(...chosen.map((index) => run[index] as At));
    }
    run = [];
  };
  for (const point of points) {
    if (run[0] && Math.round(run[0][0]) !== Math.round(point[0])) close();
    run.push(point);
  }
  close();
  return kept;
}

const isSound = ([x, y]: At): boolean => Number.isFinite(x) && Number.isFinite(y);

/** @param points undefined: a gap */
export function linePath(
  points: readonly (At | undefined)[],
  blanks: ChartPicture["blanks"],
): string {
  const runs: At[][] = [[]];
  for (const point of points) {
    if (point && isSound(point)) runs.at(-1)?.push(point);
    else if (blanks !== "span") runs.push([]);
  }
  return runs
    .filter((run) => run.length > 1)
    .map(
      (run) =>
        `M${thinned(run)
          .map(([x, y]) => `${place(x)},${place(y)}`)
          .join("L")}`,
    )
    .join("");
}

export function marksPath(shape: string, points: readonly (At | undefined)[]): string {
  if (shape === "none") return "";
  const seen = new Map<string, At>();
  for (const point of points) {
    if (point && isSound(point)) seen.set(`${place(point[0])},${place(point[1])}`, point);
    if (seen.size > mostMarks) return "";
  }
  return [...seen.values()].map(([x, y]) => markPath(shape, x, y)).join("");
}

export interface Bar {
  /** Along the categories, from and to. */
  readonly side: readonly [number, number];
  /** Along the figures. */
  readonly ends: readonly [number, number];
}

/** @param isLying bars that go across */
export function barsPath(bars: readonly Bar[], isLying: boolean): string {
  const seen = new Map<string, Bar>();
  for (const bar of bars) {
    if (![...bar.side, ...bar.ends].every(Number.isFinite)) continue;
    const key = String(Math.round(bar.side[0]));
    const there = seen.get(key);
    const all = [...bar.ends, ...(there?.ends ?? [])];
    seen.set(key, { side: bar.side, ends: [Math.min(...all), Math.max(...all)] });
  }
  return [...seen.values()]
    .map(({ side, ends: [low, high] }) => {
      const [from, to] = [Math.min(...side), Math.max(...side)];
      const [thick, long] = [Math.max(0.6, to - from), high - low];
      return isLying
        ? `M${place(low)},${place(from)}h${place(long)}v${place(thick)}h${place(-long)}Z`
        : `M${place(from)},${place(low)}h${place(thick)}v${place(long)}h${place(-thick)}Z`;
    })
    .join("");
}
