/** What a probe's curve says: the end point, how sure it is, or what is to be added. */
import { isProblem, type Problem } from "../../core/problem/problem";
import type { PairsRead } from "./read-pairs";
import { endPoint, type EndPointFound, type ProbePoint } from "../../core/titration/probe";

export interface Sure {
  readonly found: EndPointFound;
  /** Half the steepest step, mL: it is known no better. */
  readonly halfStep: number;
}

/** Which two lines give one volume, or go back: the end point is looked for between rising ones. */
export function notRising({ rows }: PairsRead): string | undefined {
  const counted = rows.filter(({ said }) => said !== "left out");
  const at = counted.findIndex(({ point: [volume] }, place) => {
    const before = counted[place - 1];
    return before !== undefined && volume.lte(before.point[0]);
  });
  const [before, after] = [counted[at - 1], counted[at]];
  if (before === undefined || after === undefined) return undefined;
  const lines = `Lines ${String(before.line)} and ${String(after.line)}`;
  return after.point[0].eq(before.point[0])
    ? `${lines} both say ${after.typed[0]} mL. Take one of them out, or put its volume right.`
    : `${lines} go back from ${before.typed[0]} to ${after.typed[0]} mL. Type the mL given in all, in their order.`;
}

export function probeFound(points: readonly ProbePoint[]): Sure | Problem | undefined {
  if (points.length === 0) return undefined;
  const found = endPoint(points);
  if (isProblem(found)) return found;
  const { from, to } = found.steepest;
  return { found, halfStep: to.minus(from).div(2).toNumber() };
}

/** A burette's drop is about this much: a finer step tells no more (common practice, no source). */
const drop = 0.05;

export const isCoarse = ({ halfStep }: Sure): boolean => halfStep > drop;
