/** What the plots of several tasks are placed by: figures in, places out. */
import type { ScaleLinear } from "d3-scale";

export interface PlotRoom {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Tick {
  readonly at: number;
  readonly label: string;
}

export interface PlacedLine {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  /** Height of its name, moved apart from the others. */
  readonly nameAt: number;
}

const about = 4;

/** Four marks or so, with the minus sign of a keyboard. */
export function ticksOf(scale: ScaleLinear<number, number>): Tick[] {
  const write = scale.tickFormat(about);
  return scale
    .ticks(about)
    .map((tick) => ({ at: scale(tick), label: write(tick).replace("−", "-") }));
}

/** From the lowest name up, each at least a name's height above the one before. */
export function namesApart(
  ends: readonly number[],
  { top: highest, bottom: lowest }: PlotRoom,
  nameHeight: number,
): number[] {
  const order = ends.map((_, index) => index).sort((a, b) => (ends[b] ?? 0) - (ends[a] ?? 0));
  const placed = [...ends];
  let room = lowest + nameHeight;
  for (const index of order) {
    placed[index] = Math.min(ends[index] ?? 0, room - nameHeight);
    room = placed[index];
  }
  // what was pushed out at the top comes back in, and pushes the others down
  let top = highest - nameHeight;
  for (const index of [...order].reverse()) {
    placed[index] = Math.max(placed[index] ?? 0, top + nameHeight);
    top = placed[index];
  }
  return placed;
}
