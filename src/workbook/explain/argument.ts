/** One argument of a call, as the pane explains it. */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { isNotFilledIn } from "../../functions/cells/cell";
import { readGrid } from "../../functions/cells/grid";
import type { NamedArgument } from "../../functions/define";
import type { Expression } from "../../sheet/formula/tree";
import type { Known } from "./value";
import type { Present } from "./equation";
import { shownValues } from "./figure-text";

export interface ArgumentExplanation {
  /** The name in the interface: sampleMass. */
  readonly name: string;
  /** What it is: one line. */
  readonly says: string;
  /** The unit of its figures; "" for words and ratios. */
  readonly unit: string;
  /** What it may be, in words. */
  readonly allowed: string;
  /** As written in the formula; undefined when nothing is written there. */
  readonly written: string | undefined;
  /** What it holds now, or what leaving it out means. */
  readonly shown: string;
  /** Nothing is given, so that what leaving it out means holds. */
  readonly isLeftOut: boolean;
  /** Whether its present value is known here. */
  readonly isKnown: boolean;
  /** What is wrong with it, in a sentence. */
  readonly problem: string | undefined;
  /** For the equation. */
  readonly present: Present;
}

const isEmpty = (value: unknown): boolean => readGrid(value).cells.every(isNotFilledIn);

/** In an equation what is written with an operator keeps its brackets. */
const inEquation = (written: string, part: Expression): string =>
  part.kind === "binary" || part.kind === "prefix" ? `(${written})` : written;

/**
 * @param given what is written in its place, and the text of it; undefined when nothing is
 * @param known its present value; undefined when there is none here
 */
export function explainArgument(
  argument: NamedArgument,
  given: { readonly part: Expression; readonly written: string } | undefined,
  known: Known | undefined,
): ArgumentExplanation {
  const written = given?.written;
  const { name, says, unit, allowed, whenLeftOut } = argument;
  const about = { name, says, unit: unit === "fraction" ? "" : unit, allowed, written };
  if (!known) {
    const shown = "no present value here";
    const present = { text: given ? inEquation(given.written, given.part) : name };
    return { ...about, shown, isLeftOut: false, isKnown: false, problem: undefined, present };
  }
  const read = argument.read(known.value, name);
  const problem = isProblem(read) ? say(read) : undefined;
  const isLeftOut = isEmpty(known.value) && !isProblem(read) && whenLeftOut !== undefined;
  const nothing = written === undefined ? "not given" : "empty";
  const shown = isLeftOut
    ? `left out: ${whenLeftOut}`
    : isEmpty(known.value)
      ? nothing
      : shownValues(known.value);
  return { ...about, shown, isLeftOut, isKnown: true, problem, present: { value: read } };
}
