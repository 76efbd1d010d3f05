/** Formulas that go by the day or the time: they come to something else each day, and rightly so. */
import { isProblem } from "../../core/problem/problem";
import { plainName } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import { isReadable } from "../../sheet/formula/readable";
import { targetOf } from "../../sheet/formula/reference";
import { nodesOf } from "../../sheet/formula/walk";

const clock = new Set(["TODAY", "NOW"]);
const deepest = 16;

/**
 * @param refersTo what a defined name stands for
 * @example goesByTheClock("=TODAY()-A2", () => undefined) // true
 */
export function goesByTheClock(
  formula: string,
  refersTo: (name: string) => string | undefined,
  depth = 0,
): boolean {
  const read = isReadable(formula) ? readFormula(formula) : undefined;
  if (!read || isProblem(read)) return false;
  return [...nodesOf(read.tree)].some((node) => {
    if (node.kind === "call") return clock.has(plainName(node.name));
    if (node.kind !== "reference" || depth >= deepest) return false;
    const target = targetOf(node);
    const meant = target.kind === "name" ? refersTo(target.name) : undefined;
    return meant !== undefined && goesByTheClock(meant, refersTo, depth + 1);
  });
}
