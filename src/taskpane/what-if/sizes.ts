/** The batch sizes: a list as typed, or from one to another by steps. */
import type { Exact } from "../../core/exact/exact";
import { shown } from "../../core/exact/rounding";
import { mostSizes } from "./fields";
import type { Figures } from "./figures";

export type Sizes =
  | { readonly kind: "sizes"; readonly values: readonly Exact[] }
  /** Nothing to say yet: a field is empty, or says itself what is wrong. */
  | { readonly kind: "wanted" }
  | { readonly kind: "wrong"; readonly sentence: string };

/** @example stepped(50, 200, 50) // 50, 100, 150, 200 */
export function stepped(from: Exact, to: Exact, step: Exact): Sizes {
  if (to.lt(from)) {
    return {
      kind: "wrong",
      sentence: `From ${shown(from)} to ${shown(to)} goes down: type the smaller size first.`,
    };
  }
  const count = to.minus(from).div(step).floor().plus(1);
  if (count.gt(mostSizes)) {
    return {
      kind: "wrong",
      sentence: `That makes ${shown(count)} batch sizes; ${String(mostSizes)} at most: take a larger step.`,
    };
  }
  const values = Array.from({ length: count.toNumber() }, (_, at) => from.plus(step.times(at)));
  return { kind: "sizes", values };
}

export function sizesOf(by: "list" | "steps", figures: Figures): Sizes {
  if (by === "list") {
    const { kind, ...found } = figures.list("sizes");
    return kind === "figures" && "values" in found
      ? { kind: "sizes", values: found.values }
      : { kind: "wanted" };
  }
  const [from, to, step] = [figures.value("from"), figures.value("to"), figures.value("step")];
  return from && to && step ? stepped(from, to, step) : { kind: "wanted" };
}
