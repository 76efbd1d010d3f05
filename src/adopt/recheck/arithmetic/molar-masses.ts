/** Constants of the core as plain doubles, for the many workings that are tried. */
import { type Base, bases } from "../../../core/reference/bases";
import type { FattyAcid } from "../../../core/reference/fatty-acids";

/** Turned into a double once a thing. */
export const plain = <K extends object>(
  of: (key: K) => { toNumber(): number },
): ((key: K) => number) => {
  const known = new WeakMap<K, number>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const value = of(key).toNumber();
    known.set(key, value);
    return value;
  };
};

export const molarMass = plain<Base>((base) => base.molarMass);
export const reportedMass = plain<FattyAcid>((acid) => acid.reportedMass);

export const otherBases = (base: Base): Base[] => bases.filter(({ name }) => name !== base.name);

/**
 * What the published coefficients come to beside a mole of base for each mole of oleic acid: 0.197 g of
 * KOH, 0.144 g of NaOH, 0.190 g of NaOCH3 for each gram of acid (commonly cited).
 */
const coefficients: Readonly<Record<string, number>> = {
  KOH: 0.197 / 0.198625,
  NaOH: 0.144 / 0.141598,
  NaOCH3: 0.19 / 0.191256,
};

/** A base by its own coefficient: whoever takes another base's figure takes that base's coefficient. */
export const coefficientOf = ({ name }: Base): number => coefficients[name] ?? 1;
