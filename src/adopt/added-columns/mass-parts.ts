/** The sample's mass in formulas: one for all titres, or one for each of them, paired by their numbers. */
import { columnLetters } from "../../sheet/cell-name";
import { headingParts } from "../recognising/heading";
import { columnsOf, type LogbookMapping } from "../recognising/mapping";
import type { Part } from "./part";

export interface MassParts {
  readonly mass: Part | undefined;
  /** What is lacking where there is none. */
  readonly massLack: string;
  /** Each titre's cell and that of its own mass; empty where one mass serves all. */
  readonly pairs: readonly { readonly titre: Part; readonly mass: Part }[];
}

const pairing =
  "one sample mass for all titres, or one for each, numbered as they are and in columns side by side";

/** @param side the cells of the masses as one range */
export function massParts(
  mapping: LogbookMapping,
  side: Part | undefined,
  onSheet: string,
): MassParts {
  const masses = columnsOf(mapping, "sampleMass");
  const titres = columnsOf(mapping, "titre");
  const ofMasses = masses.map(({ heading }) => headingParts(heading).number);
  const isForAll = masses.length <= 1 && (ofMasses[0] === undefined || titres.length <= 1);
  if (isForAll) return { mass: side, massLack: "how much oil was titrated", pairs: [] };
  const ofTitres = titres.map(({ heading }, at) => headingParts(heading).number ?? at + 1);
  const isPaired =
    masses.length === titres.length && ofMasses.every((number, at) => number === ofTitres[at]);
  if (!side || !isPaired) return { mass: undefined, massLack: pairing, pairs: [] };
  const cell =
    (column: number): Part =>
    (row) =>
      `${onSheet}${columnLetters(column)}${String(row)}`;
  const pairs = titres.map(({ column }, at) => ({
    titre: cell(column),
    mass: cell(masses[at]?.column ?? column),
  }));
  return { mass: side, massLack: "", pairs };
}
