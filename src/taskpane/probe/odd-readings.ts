/**
 * Readings that go against the curve. As titrant is given a probe goes one way: what jumps up and back was
 * most likely misread, and would draw the end point to itself. Which it is, the person says.
 */
import type { PairRead, PairsRead } from "./read-pairs";

/** A probe that settles wavers less than this (common practice, no source). */
const wavers = { ph: 0.3, mv: 20 };
/** A way through the curve is looked for among so many readings before. */
const lookBack = 200;
/** With more than this share against it there is no one way: the probe is not steady. */
const mostAgainst = 0.25;

interface Way {
  readonly length: number;
  /** All its movement: of two as long, the calmer. */
  readonly moved: number;
  readonly from: number | undefined;
}

/** The readings on the longest way that goes up by no more than so much back at a step. */
function longestUp(readings: readonly number[], back: number): ReadonlySet<number> {
  const ways: Way[] = [];
  readings.forEach((reading, at) => {
    let best: Way = { length: 1, moved: 0, from: undefined };
    for (let from = Math.max(0, at - lookBack); from < at; from += 1) {
      const [way, before] = [ways[from], readings[from]];
      if (way === undefined || before === undefined || reading < before - back) continue;
      const length = way.length + 1;
      const moved = way.moved + Math.abs(reading - before);
      if (length > best.length || (length === best.length && moved < best.moved)) {
        best = { length, moved, from };
      }
    }
    ways.push(best);
  });
  const isBetter = (way: Way, than: Way | undefined): boolean =>
    than === undefined ||
    way.length > than.length ||
    (way.length === than.length && way.moved < than.moved);
  let end: number | undefined;
  ways.forEach((way, at) => {
    if (isBetter(way, end === undefined ? undefined : ways[end])) end = at;
  });
  const on = new Set<number>();
  for (let at = end; at !== undefined; at = ways[at]?.from) on.add(at);
  return on;
}

export interface OddReading {
  readonly line: number;
  /** A question: it names the reading, and what stands beside it. */
  readonly question: string;
}

export interface OddReadings {
  readonly odd: readonly OddReading[];
  readonly isUnsteady: boolean;
}

function questionOf(rows: readonly PairRead[], at: number): string {
  const { line, typed } = rows[at] as PairRead;
  const [before, after] = [rows[at - 1], rows[at + 1]].map((row) => row?.typed[1]);
  const beside =
    before === undefined
      ? `After it stands ${after ?? "none"}.`
      : `Before it stands ${before}${after === undefined ? "" : `, after it ${after}`}.`;
  return `Line ${String(line)}: is ${typed[1]} at ${typed[0]} mL right? ${beside}`;
}

export function oddReadings({ rows, isPh }: PairsRead): OddReadings {
  const asked = rows.filter(({ said }) => said === "");
  const readings = asked.map(({ point: [, reading] }) => reading.toNumber());
  const back = isPh ? wavers.ph : wavers.mv;
  const up = longestUp(readings, back);
  const down = longestUp(
    readings.map((reading) => -reading),
    back,
  );
  const on = down.size > up.size ? down : up;
  const against = asked.flatMap((_, at) => (on.has(at) ? [] : [at]));
  const isUnsteady = against.length > asked.length * mostAgainst;
  return {
    odd: isUnsteady
      ? []
      : against.map((at) => ({
          line: (asked[at] as PairRead).line,
          question: questionOf(asked, at),
        })),
    isUnsteady,
  };
}
