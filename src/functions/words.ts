/** The arguments that take a word, or a word or a figure: base, unit, fatty acid, oil, solvent. */
import { type exact, zero } from "../core/exact/exact";
import { as, type MilligramPerKilogram, type PerCelsius } from "../core/quantity/quantity";
import {
  type AmountUnit,
  amountUnitNamed,
  amountUnits,
  isBareGallon,
} from "../core/quantity/units";
import { type Outcome, isProblem, problem } from "../core/problem/problem";
import { type Base, baseNamed, baseNames, bases } from "../core/reference/bases";
import { type FattyAcid, fattyAcidNamed, fattyAcids, oleic } from "../core/reference/fatty-acids";
import { allowedWords, type Limits, limits } from "../core/reference/limits";
import { titrantExpansion, type TitrantSolvent } from "../core/reference/liquids";
import { type Oil, oilNamed, oilNotNamed, oilOfDensity, oils } from "../core/reference/oils";
import { type Argument, single, unknownWord, word } from "./arguments";
import { figure } from "./cells/figure";

export const base = (says: string): Argument<Base> =>
  word(
    {
      words: bases.flatMap((each) => [each.name, ...each.alsoCalled]),
      allowed: `${baseNames.join(", ")}, or the English name`,
      named: baseNamed,
    },
    "base",
    says,
  );

const unitNames = amountUnits.flatMap((unit) => [unit.name, ...unit.alsoCalled]);

/** A unit of volume or mass. A bare gallon is refused, with both gallons named. */
export const amountUnit = (says: string): Argument<AmountUnit> =>
  single(
    { says, unit: "", allowed: unitNames.join(", "), words: unitNames },
    (cell, argument) => {
      if (cell.kind !== "text") return unknownWord(cell, argument, unitNames.join(", "));
      if (isBareGallon(cell.text)) return problem({ code: "which-gallon", argument });
      return amountUnitNamed(cell.text) ?? unknownWord(cell, argument, unitNames.join(", "));
    },
    (argument) => problem({ code: "not-filled-in", argument, called: "unit" }),
  );

/** A reader of a word or a figure: what the figure means is said by `byFigure`. */
function wordOrFigure<T, L extends Limits>(about: {
  says: string;
  words: readonly string[];
  allowed: string;
  limit: L;
  named: (text: string) => T | undefined;
  byFigure: (value: ReturnType<typeof exact>) => T;
  whenLeftOut: { words: string; value: T } | undefined;
  called: string;
}): Argument<T> {
  const { says, words, allowed, limit, named, byFigure, whenLeftOut, called } = about;
  return single(
    {
      says,
      unit: limit.unit,
      allowed,
      limits: limit,
      words,
      ...(whenLeftOut ? { whenLeftOut: whenLeftOut.words } : {}),
    },
    (cell, argument): Outcome<T> => {
      if (cell.kind === "text") return named(cell.text) ?? unknownWord(cell, argument, allowed);
      const value = figure(cell, limit, argument);
      return isProblem(value) ? value : byFigure(value);
    },
    (argument) =>
      whenLeftOut ? whenLeftOut.value : problem({ code: "not-filled-in", argument, called }),
  );
}

/** A range in as few words as can be: these lists of names are long, and a sentence is short. */
const span = (limit: Limits): string => `${limit.from} to ${limit.to} ${limit.unit}`;

const acidNames = fattyAcids.map((acid) => acid.name);
const acid = (says: string, isRequired: boolean): Argument<FattyAcid> =>
  wordOrFigure({
    says,
    words: acidNames,
    allowed: `${acidNames.join(", ")}, or ${span(limits.fattyAcidMass)}`,
    limit: limits.fattyAcidMass,
    named: fattyAcidNamed,
    byFigure: (value) => ({ name: "the acid", reportedMass: as("g/mol", value) }),
    whenLeftOut: isRequired ? undefined : { words: "oleic", value: oleic },
    called: "fatty acid",
  });

const acidSays = "The acid the percentage is reported as, or its molar mass in g/mol.";
export const fattyAcid = acid(acidSays, false);
export const requiredFattyAcid = acid(acidSays, true);

const oilNames = oils.flatMap((each) => [each.name, ...each.alsoCalled]);

export const oil: Argument<Oil> = wordOrFigure({
  says: "The oil by name, or its density at 20 C in kg/L.",
  words: oilNames,
  allowed: `${oilNames.join(", ")}, or ${span(limits.oilDensity)}`,
  limit: limits.oilDensity,
  named: oilNamed,
  byFigure: (value) => oilOfDensity(as("kg/L", value)),
  whenLeftOut: { words: `${oilNotNamed.density.toString()} kg/L, triolein`, value: oilNotNamed },
  called: "oil",
});

const noneWord = "none";

/** Free base in fuel; none where none was found. */
export const freeBase: Argument<MilligramPerKilogram> = wordOrFigure({
  says: "Free base in the fuel, mg/kg (see FUELCATALYST), or the word none.",
  words: [noneWord],
  allowed: `${noneWord}, or ${allowedWords(limits.inFuel)}`,
  limit: limits.inFuel,
  named: (text) => (text.trim().toLowerCase() === noneWord ? as("mg/kg", zero) : undefined),
  byFigure: (value) => as("mg/kg", value),
  whenLeftOut: { words: "no free base was found", value: as("mg/kg", zero) },
  called: "free base",
});

const solvents = Object.keys(titrantExpansion) as TitrantSolvent[];
const solventNamed = (text: string): PerCelsius | undefined => {
  const solvent = solvents.find((name) => name === text.trim().toLowerCase());
  return solvent && titrantExpansion[solvent];
};

export const titrantSolvent: Argument<PerCelsius> = wordOrFigure({
  says: "What the titrant is dissolved in: alcohol, water, or its expansion per C.",
  words: solvents,
  allowed: `${solvents.join(", ")}, or a number ${allowedWords(limits.titrantExpansion)}`,
  limit: limits.titrantExpansion,
  named: solventNamed,
  byFigure: (value) => as("1/C", value),
  whenLeftOut: undefined,
  called: "titrant solvent",
});
