/** The figures an equation needs, from what an argument was read as: KOH becomes its molar mass. */
import { densityAt } from "../../core/batch/density";
import { soapMolarMass } from "../../core/batch/soap";
import { type Exact, isExact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import type { Celsius } from "../../core/quantity/quantity";
import type { AmountUnit } from "../../core/quantity/units";
import type { Base } from "../../core/reference/bases";
import type { FattyAcid } from "../../core/reference/fatty-acids";
import type { Oil } from "../../core/reference/oils";
import type { NamedArgument } from "../../functions/define";
import { shownFigure } from "./figure-text";

const has = <T>(value: unknown, field: keyof T): value is T =>
  typeof value === "object" && value !== null && field in value;

const isBase = (value: unknown): value is Base => has<Base>(value, "molarMass");
const isAcid = (value: unknown): value is FattyAcid => has<FattyAcid>(value, "reportedMass");
const isOil = (value: unknown): value is Oil => has<Oil>(value, "densityAt");
const isList = (value: unknown): value is { filled: readonly Exact[] } =>
  has<{ filled: readonly Exact[] }>(value, "filled");

/** A mass needs no density to become kilograms. */
export const isMassUnit = (value: unknown): boolean =>
  has<AmountUnit>(value, "measures") && value.measures === "mass";

/** "20 C" is 20, "no acid" is 0; a default that is not a figure leaves the argument's name. */
function whenLeftOut({ name, whenLeftOut: says = "" }: NamedArgument): string {
  const [figure] = /^[\d.]+/.exec(says) ?? [];
  return figure ?? (says.startsWith("no ") ? "0" : name);
}

/** The figures an argument puts into an equation: one, or those of a list. */
export function figuresOf(argument: NamedArgument, value: unknown): string[] {
  if (value === undefined) return [whenLeftOut(argument)];
  if (isExact(value)) return [shownFigure(value)];
  if (Array.isArray(value)) return value.filter(isExact).map(shownFigure);
  if (isList(value)) return value.filled.map(shownFigure);
  if (isBase(value)) return [shownFigure(value.molarMass)];
  if (isAcid(value)) return [shownFigure(value.reportedMass)];
  if (has<AmountUnit>(value, "factor")) return [shownFigure(value.factor)];
  if (isOil(value)) return [value.name];
  return [String(value)];
}

/** What the words density(...), triglyceride(...) and soap(...) in an equation stand for. */
export function derivedFigure(word: string, values: readonly unknown[]): string | undefined {
  const [first, second] = values;
  if (word === "soap" && isBase(first)) return shownFigure(soapMolarMass(first));
  if (!isOil(first)) return undefined;
  if (word === "triglyceride") return shownFigure(first.triglyceride);
  const density = densityAt(first, isExact(second) ? (second as Celsius) : undefined);
  return word === "density" && !isProblem(density) ? shownFigure(density) : undefined;
}
