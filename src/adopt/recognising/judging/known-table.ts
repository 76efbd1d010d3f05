/** What is known of a table, role by role, for columns of which no word is known. */
import type { Candidate } from "../context";
import type { RoleId } from "../roles";
import { each, type Figures, valuesOf } from "./figures";

export interface KnownTable {
  readonly has: (role: RoleId) => boolean;
  /** Of the first column that is it. */
  readonly of: (role: RoleId) => Figures | undefined;
  readonly all: (role: RoleId) => readonly Figures[];
  readonly unit: (role: RoleId) => string | undefined;
}

export interface Unnamed {
  readonly candidate: Candidate;
  readonly own: Figures;
}

/** The mean of what is filled in. */
export function meanOf(columns: readonly Figures[]): Figures | undefined {
  const [first] = columns;
  return first?.map((_, at) => {
    const filled = valuesOf(columns.map((column) => column[at]));
    return filled.length === 0
      ? undefined
      : filled.reduce((sum, value) => sum + value, 0) / filled.length;
  });
}

export const readOf = (t: KnownTable): Figures | undefined =>
  t.has("titre") ? meanOf(t.all("titre")) : t.of("meanTitre");

/** What is left of the titres; nothing where the blank is not known. */
export function netOf(t: KnownTable): Figures | undefined {
  const net = t.of("correctedTitre");
  if (net) return net;
  const read = readOf(t);
  return read && each(read, meanOf(t.all("blank")), (a, b) => a - b);
}

/** kg/L, near enough to tell grams from millilitres. */
const density = 0.915;

export const gramsOf = (t: KnownTable): Figures | undefined =>
  t.of("sampleMass") ?? t.of("sampleVolume")?.map((value) => value && value * density);

/** Something in one ratio to the acid of the oil. */
export const acidOf = (t: KnownTable): Figures | undefined => {
  const named = t.of("ffa") ?? t.of("acidValue");
  if (named) return named;
  const [net, grams] = [netOf(t), gramsOf(t)];
  return net && grams && each(net, grams, (a, b) => a / b);
};

/** mg KOH for each gram, by whichever acid figure is known; a % FFA is of oleic acid. */
export const acidValueOf = (t: KnownTable): Figures | undefined =>
  t.of("acidValue") ??
  t.of("ffa")?.map((value) => value && (value * (t.unit("ffa") === "fraction" ? 100 : 1)) / 0.5027);

const molar = { KOH: 56.1, NaOH: 40 } as const;

/** mol/L; grams of an unnamed base are either. */
export function molaritiesOf(t: KnownTable): readonly Figures[] {
  const molarity = t.of("molarity");
  if (molarity) return [molarity];
  const grams = t.of("strength");
  const scale = t.unit("strength") === "% w/v" ? 10 : 1;
  return grams
    ? Object.values(molar).map((mass) => grams.map((value) => value && (value * scale) / mass))
    : [];
}
