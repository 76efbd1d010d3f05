/** What a probe's curve says: the end point, how sure it is, or what is to be added. */
import { isProblem, type Problem } from "../../core/problem/problem";
import { endPoint, type EndPointFound, type ProbePoint } from "../../core/titration/probe";

export interface Sure {
  readonly found: EndPointFound;
  /** Half the steepest step, mL: it is known no better. */
  readonly halfStep: number;
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
