/**
 * The acid a % FFA is reported as. Four are conventional figures fixed by ISO 660 Table 2 and AOCS
 * Ca 5a-40 (commonly cited); the others use their molar mass. The choice changes the figure shown,
 * never the moles of acid and so never the dose.
 */
import { type GramPerMole, quantity } from "../quantity/quantity";
import { molarMass } from "./molar-mass";

export interface FattyAcid {
  readonly name: string;
  readonly reportedMass: GramPerMole;
}

const conventional = (name: string, mass: string): FattyAcid => ({
  name,
  reportedMass: quantity("g/mol", mass),
});
const byFormula = (name: string, formula: string): FattyAcid => ({
  name,
  reportedMass: molarMass(formula),
});

export const oleic = conventional("oleic", "282");

export const fattyAcids: readonly FattyAcid[] = [
  oleic,
  conventional("palmitic", "256"),
  conventional("lauric", "200"),
  conventional("erucic", "338"),
  byFormula("myristic", "C14H28O2"),
  byFormula("palmitoleic", "C16H30O2"),
  byFormula("stearic", "C18H36O2"),
  byFormula("linoleic", "C18H32O2"),
  byFormula("linolenic", "C18H30O2"),
  byFormula("ricinoleic", "C18H34O3"),
  byFormula("arachidic", "C20H40O2"),
];

/** The acid a word names, or undefined. Case and outer spaces are ignored. */
export const fattyAcidNamed = (word: string): FattyAcid | undefined =>
  fattyAcids.find((acid) => acid.name === word.trim().toLowerCase());
