/** What `npm run try` prints for a formula, as text. */
import { isProblem, problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { Answer, CellValue } from "../../functions/answer";
import { catalogue } from "../../functions/catalogue";
import { namespace } from "../../functions/names";
import type { ArgumentExplanation } from "../../workbook/explain/argument";
import { type CallExplanation, explainFormula } from "../../workbook/explain/explain";
import { readFormula } from "../../sheet/formula/read";
import type { Call } from "../../sheet/formula/tree";
import { titreCalls } from "../../sheet/formula/walk";
import { plainCall } from "../../partner/plain/plain-call";
import { plainLines } from "../../partner/plain/plain-lines";
import { columns } from "./columns";

export interface Report {
  readonly text: string;
  /** Every function in it was found and gave an answer, or said what stands in its way. */
  readonly isComplete: boolean;
}

const usage = `Give a formula in single quotes:
  npm run try -- '=${namespace}.CORRECTED({2.4,2.5,2.45},{0.15})'`;

const functionList = `The functions of ${namespace} are: ${catalogue.map(({ id }) => id).join(", ")}.`;

const isFigures = (shown: string): boolean => /^−?\d[\d.,;e+\s−]*$/.test(shown);

const argumentRow = ({ name, shown, unit, says }: ArgumentExplanation): string[] => [
  name,
  isFigures(shown) && unit !== "" ? `${shown} ${unit}` : shown,
  says,
];

/** In full: this is where a checker compares digits. */
const cellText = (value: CellValue): string =>
  typeof value === "boolean" ? String(value).toUpperCase() : String(value);

function answerLines(answer: Answer, result: string): string[] {
  if (Array.isArray(answer)) {
    const rows = answer.map((row) => row.map(cellText));
    return [`  ${result}:`, ...columns(rows, "    ")];
  }
  return [typeof answer === "string" ? `  ${answer}` : `  = ${cellText(answer)}   ${result}`];
}

const isUnknown = (call: CallExplanation): boolean =>
  call.answer === undefined && call.problem === undefined;

function outcomeLines(call: CallExplanation): string[] {
  if (call.problem) return [`  ${call.problem.shows}: ${call.problem.says}`];
  if (call.answer !== undefined) return answerLines(call.answer, call.entry?.result ?? "");
  const missing = call.arguments.find((argument) => !argument.isKnown)?.written ?? "";
  return [`  No answer: ${say(problem({ code: "no-figure", given: missing }))}`];
}

/** The same without the add-in, where there is an answer to compare it with. */
function twinLines({ entry, answer }: CallExplanation, call: Call | undefined): string[] {
  if (!entry || !call || answer === undefined) return [];
  return [
    "  In plain formulas:",
    ...plainLines(plainCall(entry, call)).map((line) => `    ${line}`),
  ];
}

function callLines(call: CallExplanation): string[] {
  const { entry } = call;
  if (!entry) return [...outcomeLines(call), `  ${functionList}`];
  return [
    `${namespace}.${entry.id}: ${entry.summary}`,
    ...columns(call.arguments.map(argumentRow)),
    `  ${call.equation}`,
    ...(call.worked === undefined ? [] : [`  = ${call.worked}`]),
    ...outcomeLines(call),
  ];
}

/** Each function of ours in the formula: its arguments, its equation with the figures, its answer. */
export function report(formula: string): Report {
  if (formula.trim() === "") return { text: usage, isComplete: false };
  const calls = explainFormula(formula, () => undefined);
  if (isProblem(calls)) return { text: say(calls), isComplete: false };
  if (calls.length === 0) {
    const none = say(problem({ code: "no-call", given: formula }));
    return { text: `${none}\n${functionList}`, isComplete: false };
  }
  const read = readFormula(formula);
  const nodes = isProblem(read) ? [] : titreCalls(read.tree);
  const text = calls
    .map((call, place) => [...callLines(call), ...twinLines(call, nodes[place])].join("\n"))
    .join("\n\n");
  const isComplete = calls.every((call) => call.entry !== undefined && !isUnknown(call));
  return { text, isComplete };
}
