/** The bases a titrant or a catalyst can be. All of them neutralise mole for mole. */
import type { GramPerMole } from "../quantity/quantity";
import { molarMass } from "./molar-mass";

export interface Base {
  /** The short name shown and written: KOH. */
  readonly name: "KOH" | "NaOH" | "KOCH3" | "NaOCH3";
  /** Other names people write; case and spaces are ignored. */
  readonly alsoCalled: readonly string[];
  /** From the weights in atomic-weights.ts: 56.1053 for KOH, 39.997 for NaOH. */
  readonly molarMass: GramPerMole;
  /** The soap it makes carries this metal. */
  readonly metal: "K" | "Na";
  readonly isMethoxide: boolean;
}

export const bases: readonly Base[] = [
  {
    name: "KOH",
    alsoCalled: ["potassium hydroxide", "caustic potash"],
    molarMass: molarMass("KOH"),
    metal: "K",
    isMethoxide: false,
  },
  {
    name: "NaOH",
    alsoCalled: ["sodium hydroxide", "caustic soda"],
    molarMass: molarMass("NaOH"),
    metal: "Na",
    isMethoxide: false,
  },
  {
    name: "KOCH3",
    alsoCalled: ["potassium methoxide"],
    molarMass: molarMass("KOCH3"),
    metal: "K",
    isMethoxide: true,
  },
  {
    name: "NaOCH3",
    alsoCalled: ["sodium methoxide"],
    molarMass: molarMass("NaOCH3"),
    metal: "Na",
    isMethoxide: true,
  },
];

/** The short names, in that order. */
export const baseNames: readonly Base["name"][] = bases.map(({ name }) => name);

const plain = (word: string): string => word.replace(/\s+/g, "").toLowerCase();

/** The base a word names, or undefined. Case and all spaces are ignored. */
export const baseNamed = (word: string): Base | undefined =>
  bases.find((base) => [base.name, ...base.alsoCalled].some((name) => plain(name) === plain(word)));
