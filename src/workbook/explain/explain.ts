/**
 * Explains a cell: each of our functions in its formula, what its arguments hold now, its equation
 * with the figures put in, and its answer or what stands in its way. Plain values; the pane and the
 * command line only draw them.
 */
import { type Outcome, isProblem, problem, type Problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { Answer } from "../../functions/answer";
import { catalogue } from "../../functions/catalogue";
import type { WorksheetFunction } from "../../functions/define";
import { titreCallId } from "../../sheet/formula/names";
import { type Formula, readFormula, textOf } from "../../sheet/formula/read";
import type { Span } from "../../sheet/formula/token";
import type { Call, Expression } from "../../sheet/formula/tree";
import { answerOf, errorOf, type Surroundings, valueOf } from "./value";
import { nodesOf, titreCalls } from "../../sheet/formula/walk";
import { type ArgumentExplanation, explainArgument } from "./argument";
import { equationInFigures, equationInWords } from "./equation";

export interface CallExplanation extends Span {
  /** DOSE. */
  readonly id: string;
  /** The call as written. */
  readonly written: string;
  /** The catalogue's entry: summary, result, notes, sources. Undefined when there is no such function. */
  readonly entry: WorksheetFunction | undefined;
  readonly arguments: readonly ArgumentExplanation[];
  /** With the arguments' names. */
  readonly equation: string;
  /** With the present figures; undefined when it takes none, or when there is no answer to suggest. */
  readonly worked: string | undefined;
  /** Undefined when there is a problem, or when an argument has no present value here. */
  readonly answer: Answer | undefined;
  /** What the cell shows instead of an answer, and why. */
  readonly problem: { readonly shows: string; readonly says: string } | undefined;
}

/** The present values of a reference or an expression, by its text; undefined when not known. */
export type Lookup = Surroundings["lookup"];

const wrong = (found: Problem, shows: string = errorOf(found)) => ({ shows, says: say(found) });

function explainCall(formula: Formula, call: Call, around: Surroundings): CallExplanation {
  const id = titreCallId(call) ?? call.name;
  const entry = around.functionNamed(id);
  const about = { id, written: textOf(formula, call), entry, start: call.start, end: call.end };
  if (!entry) {
    const unknown = problem({ code: "unknown-function", given: call.name });
    const nothing = { arguments: [], equation: "", worked: undefined, answer: undefined };
    return { ...about, ...nothing, problem: wrong(unknown, "#NAME?") };
  }
  const explained = entry.arguments.map((argument, place) => {
    const part = call.arguments[place];
    if (!part || part.kind === "omitted") {
      return explainArgument(argument, undefined, { value: undefined });
    }
    const written = textOf(formula, part);
    return explainArgument(argument, { part, written }, valueOf(part, around));
  });
  const answer = answerOf(call, around);
  const present = new Map(explained.map((each) => [each.name, each.present]));
  const equation = equationInWords(entry);
  const worked = equationInFigures(entry, present);
  const isWrong = isProblem(answer) || explained.some((each) => each.problem !== undefined);
  return {
    ...about,
    arguments: explained,
    equation,
    worked: isWrong || worked === equation ? undefined : worked,
    answer: isProblem(answer) ? undefined : answer,
    problem: isProblem(answer) ? wrong(answer) : undefined,
  };
}

/** Is this function known at all? Asked so of figures alone, it says nothing of the cell's own result. */
const isProbe = (node: Expression): boolean =>
  node.kind === "call" &&
  /^iserr(or)?$/i.test(node.name) &&
  node.arguments.every(
    (part) =>
      part.kind !== "omitted" && [...nodesOf(part)].every(({ kind }) => kind !== "reference"),
  );

function saysOfCell(tree: Expression): Call[] {
  const probes = [...nodesOf(tree)].filter(isProbe);
  return titreCalls(tree).filter(
    ({ start, end }) => !probes.some((probe) => probe.start <= start && end <= probe.end),
  );
}

/**
 * Every call of our functions in a formula, an outer one before those among its arguments. None for
 * a formula without any; a problem for a formula that cannot be read.
 * @param lookup gives the values a reference holds now, by its text as written in the formula
 */
export function explainFormula(
  text: string,
  lookup: Lookup,
  functions: readonly WorksheetFunction[] = catalogue,
): Outcome<readonly CallExplanation[]> {
  const formula = readFormula(text);
  if (isProblem(formula)) return formula;
  const around: Surroundings = {
    lookup,
    functionNamed: (id) => functions.find((entry) => entry.id === id),
    textOf: (part) => textOf(formula, part),
  };
  return saysOfCell(formula.tree).map((call) => explainCall(formula, call, around));
}
