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
