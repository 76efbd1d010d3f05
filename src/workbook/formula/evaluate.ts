/** Runs a formula that is one call of our functions with its figures written out. */
import { type Outcome, isProblem, problem } from "../../core/problem/problem";
import type { Answer } from "../../functions/answer";
import { functionNamed } from "../../functions/catalogue";
import { titreCallId } from "./names";
import { readFormula, textOf } from "./read";
import { answerOf, type Surroundings, valueOf } from "./value";

/**
 * The answer, or what stands in its way: a formula that cannot be read, a function there is none of,
 * an argument without a value here, or a problem of the function itself.
 * @example evaluateFormula("=TITRE.CORRECTED({2.4,2.5},{0.15})") // 2.3
 */
export function evaluateFormula(text: string): Outcome<Answer> {
  const formula = readFormula(text);
  if (isProblem(formula)) return formula;
  const { tree } = formula;
  const id = tree.kind === "call" ? titreCallId(tree) : undefined;
  if (tree.kind !== "call" || id === undefined) return problem({ code: "no-call", given: text });
  if (!functionNamed(id)) return problem({ code: "unknown-function", given: tree.name });
  const around: Surroundings = {
    lookup: () => undefined,
    functionNamed,
    textOf: (part) => textOf(formula, part),
  };
  const answer = answerOf(tree, around);
  if (answer !== undefined) return answer;
  const unknown = tree.arguments.find((argument) => valueOf(argument, around) === undefined);
  return problem({ code: "no-figure", given: unknown ? textOf(formula, unknown) : text });
}
