/**
 * functions.json: what the spreadsheet program needs to know before it loads our code. Made from the
 * catalogue by the build. Both data-type flags are on, so that error cells and rich values reach the
 * readers instead of failing before them.
 */
import type { NamedArgument, WorksheetFunction } from "./define";

const unitInName: Record<string, string> = {
  mL: "Ml",
  L: "Litres",
  g: "Grams",
  kg: "Kg",
  "mol/L": "MolPerLitre",
  "g/L": "GramsPerLitre",
  "mg KOH/g": "MgKohPerGram",
  "mg/kg": "MgPerKg",
  kPa: "Kilopascals",
  "%": "Percent",
  C: "Celsius",
};

/** The name shown while typing carries the unit: sampleMassGrams. Words and ratios have none. */
export function shownName(argument: NamedArgument): string {
  const suffix = argument.words ? "" : (unitInName[argument.unit] ?? "");
  return argument.name.toLowerCase().endsWith(suffix.toLowerCase())
    ? argument.name
    : argument.name + suffix;
}

/** Square brackets in the interface: the argument need not be there. */
export const isOptional = (argument: NamedArgument): boolean =>
  argument.whenLeftOut !== undefined && !argument.listedAsRequired;

/** One line for the tooltip: what it is, and what leaving it out means. */
export const described = (argument: NamedArgument): string =>
  argument.whenLeftOut === undefined
    ? argument.says
    : `${argument.says} Left out: ${argument.whenLeftOut}.`;

export interface FunctionMetadata {
  id: string;
  name: string;
  description: string;
  helpUrl: string;
  parameters: {
    name: string;
    description: string;
    type: "any";
    dimensionality: "matrix" | "scalar";
    optional: boolean;
  }[];
  result: { type: "any"; dimensionality: "matrix" | "scalar" };
}

const dimensionality = (isMatrix: boolean): "matrix" | "scalar" => (isMatrix ? "matrix" : "scalar");

/** The help page of a function, inside the help folder. */
export const helpPageName = (id: string): string => `${id.toLowerCase()}.html`;

const metadataOf = (entry: WorksheetFunction, base: string): FunctionMetadata => ({
  id: entry.id,
  name: entry.id,
  description: entry.summary,
  helpUrl: `${base}help/${helpPageName(entry.id)}`,
  parameters: entry.arguments.map((argument) => ({
    name: shownName(argument),
    description: described(argument),
    type: "any",
    dimensionality: dimensionality(argument.list),
    optional: isOptional(argument),
  })),
  result: { type: "any", dimensionality: dimensionality(entry.spills) },
});

/** The whole file. `base` is the address the add-in is served from, with its closing slash. */
export const functionsJson = (catalogue: readonly WorksheetFunction[], base: string) => ({
  allowCustomDataForDataTypeAny: true,
  allowErrorForDataTypeAny: true,
  functions: catalogue.map((entry) => metadataOf(entry, base)),
});
