/** A function's equation for the eye: with its arguments' names, and with the figures in their place. */
import type { WorksheetFunction } from "../../functions/define";
import { derivedFigure, figuresOf, isMassUnit } from "./equation-figures";

/** An argument as it stands now: read, or known only by its text. */
export type Present =
  { readonly value: unknown; readonly text?: undefined } | { readonly text: string };

const typeset = (equation: string): string =>
  equation
    .replace(/ \* /g, " × ")
    .replace(/ \/ /g, " ÷ ")
    .replace(/ - /g, " − ")
    .replace(/<=/g, "≤")
    .replace(/>=/g, "≥")
    .replace(/\^2\b/g, "²");

/** 56.1 × molarity × correctedTitre ÷ sampleMass */
export const equationInWords = ({ equation }: WorksheetFunction): string =>
  typeset(equation.replace(/\{(\w+)\}/g, "$1"));

const derivedWord = /\b(density|triglyceride|soap)\(([^()]*)\)/g;
/** Kilograms of a mass need no density. */
const massFactor = / \* density\([^()]*\)/;

/** No blanks, since the solvent was neutralised: nothing is taken off. */
const isNone = (value: unknown): boolean => Array.isArray(value) && value.length === 0;

const namesIn = (text: string): string[] =>
  [...text.matchAll(/\{(\w+)\}/g)].map(([, name = ""]) => name);

/** In brackets of its own a list stands bare: mean(2.4, 2.5). Elsewhere it has braces. */
function listed(figures: readonly string[], isBracketed: boolean): string {
  const [only = "0", ...others] = figures;
  if (others.length > 0) return isBracketed ? figures.join(", ") : `{${figures.join(", ")}}`;
  return only.startsWith("−") && !isBracketed ? `(${only})` : only;
}

type Values = ReadonlyMap<string, Present>;

const textAt = (present: Values, name: string): string | undefined => present.get(name)?.text;

function valueAt(present: Values, name: string): unknown {
  const found = present.get(name);
  return found?.text === undefined ? found?.value : undefined;
}

/** density(canola, 25) is a figure too, once the oil and its temperature are known. */
const withDerived = (equation: string, present: Values): string =>
  equation
    .replace(massFactor, (factor) => (isMassUnit(valueAt(present, "unit")) ? "" : factor))
    .replace(derivedWord, (whole, word: string, given: string) => {
      const names = namesIn(given);
      if (names.some((name) => textAt(present, name) !== undefined)) return whole;
      const values = names.map((name) => valueAt(present, name));
      return derivedFigure(word, values) ?? whole;
    });

/** 56.1 × 0.1 × 2.3 ÷ 10. An argument without a value here stands there as it was written. */
export function equationInFigures(entry: WorksheetFunction, present: Values): string {
  const put = (_: string, open = "", name = "", close = "") => {
    const argument = entry.arguments.find((each) => each.name === name);
    const text = textAt(present, name);
    if (text !== undefined || !argument) return open + (text ?? name) + close;
    const isBracketed = open !== "" && close !== "";
    const figures = figuresOf(argument, valueAt(present, name));
    return open + listed(figures, isBracketed) + close;
  };
  return typeset(withDerived(entry.equation, present))
    .replace(/\bmean\(\{(\w+)\}\)/g, (whole, name: string) =>
      isNone(valueAt(present, name)) ? "0" : whole,
    )
    .replace(/(\()?\{(\w+)\}(\))?/g, put);
}
