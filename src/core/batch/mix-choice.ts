/**
 * Which lots in store make a batch of so much oil, of so much acid at most. A linear programme with the
 * lots in order: of the first as much as still lets the others meet the target, then of the next.
 */
import { type Exact, exact, zero } from "../exact/exact";
import { smallest } from "../exact/lists";
import { type AcidValue, as, type Kilogram } from "../quantity/quantity";
import { blendedAcidValue } from "./blend";

export interface StoredLot {
  readonly lot: string;
  readonly acidValue: AcidValue;
  /** What is left of it. */
  readonly left: Kilogram;
  /** Day it was collected; undefined counts as the youngest. */
  readonly collected: number | undefined;
}

/** Lots are used up in this order, as far as the target allows. */
export type MixRule = "least acid first" | "oldest first";

export interface Taken extends StoredLot {
  readonly taken: Kilogram;
  /** What is left after it. */
  readonly after: Kilogram;
}

export type MixChoice =
  | { readonly kind: "mix"; readonly lots: readonly Taken[]; readonly acidValue: AcidValue }
  /** Not that much oil is left. */
  | { readonly kind: "too little"; readonly left: Kilogram }
  /** The least acid that so much oil of these lots can have is more than the target. */
  | { readonly kind: "too sour"; readonly lots: readonly Taken[]; readonly acidValue: AcidValue };

const byAcid = (a: StoredLot, b: StoredLot): number => a.acidValue.comparedTo(b.acidValue);
const byAge = (a: StoredLot, b: StoredLot): number =>
  (a.collected ?? Infinity) - (b.collected ?? Infinity) || byAcid(a, b);

interface Part {
  readonly from: StoredLot;
  readonly taken: Exact;
}

/** So much of these, the least acid first: no mix of them has less. */
function sweetest(lots: readonly StoredLot[], amount: Exact): Part[] {
  let wanted = amount;
  return [...lots].sort(byAcid).map((from) => {
    const taken = smallest([from.left, wanted]);
    wanted = wanted.minus(taken);
    return { from, taken };
  });
}

const acidOf = (parts: readonly Part[]): Exact =>
  parts.reduce((sum, { from, taken }) => sum.plus(from.acidValue.times(taken)), zero);

const massOf = (parts: readonly Part[]): Exact =>
  parts.reduce((sum, { taken }) => sum.plus(taken), zero);

/** Of a kilogram: rounded down, so that the others can still make up for all of it. */
const places = 12;
const roundDown = 1;

/**
 * The most of one lot that still leaves room for the others to meet the target. It takes the place of the
 * others' parts, the most acid first: each that gives way to it changes the acid by the difference of the
 * two. The least acid of all meets the target, so that there is room before any part makes it more acid.
 */
function mostOf(lot: StoredLot, others: readonly StoredLot[], amount: Exact, acid: Exact): Exact {
  const filled = sweetest(others, amount);
  // with none of it, so much is still wanted: the others alone may not be enough
  let taken = amount.minus(massOf(filled));
  let room = acid.minus(acidOf(filled)).minus(lot.acidValue.times(taken));
  for (const { from, taken: part } of [...filled].reverse()) {
    const step = smallest([part, lot.left.minus(taken)]);
    const more = lot.acidValue.minus(from.acidValue);
    const fits = more.lte(0)
      ? step
      : smallest([step, room.div(more).toDecimalPlaces(places, roundDown)]);
    taken = taken.plus(fits);
    room = room.minus(more.times(fits));
  }
  return taken;
}

const takenOf = (parts: readonly Part[]): Taken[] =>
  parts
    .filter(({ taken }) => taken.gt(0))
    .map(({ from, taken }) => ({
      ...from,
      taken: as("kg", taken),
      after: as("kg", from.left.minus(taken)),
    }));

const mixed = (lots: readonly Taken[]): AcidValue =>
  blendedAcidValue(lots.map(({ acidValue, taken }) => [acidValue, taken] as const));

/**
 * @param amount kg of oil, above 0
 * @param target the acid value that the mix may have at most
 * @returns never more of a lot than is left of it; together the amount asked for
 */
export function chooseMix(
  stored: readonly StoredLot[],
  amount: Kilogram,
  target: AcidValue,
  rule: MixRule,
): MixChoice {
  const there = stored.filter(({ left }) => left.gt(0));
  const left = there.reduce<Exact>((sum, each) => sum.plus(each.left), zero);
  if (left.lt(amount)) return { kind: "too little", left: as("kg", left) };
  const best = takenOf(sweetest(there, amount));
  // an edge allows 1e-9, as every limit here does
  const acid = target.times(amount).times(exact("1.000000001"));
  if (acidOf(sweetest(there, amount)).gt(acid)) {
    return { kind: "too sour", lots: best, acidValue: mixed(best) };
  }
  if (rule === "least acid first") return { kind: "mix", lots: best, acidValue: mixed(best) };
  const parts: Part[] = [];
  let rest = [...there].sort(byAge);
  for (let [lot, ...others] = rest; lot !== undefined; [lot, ...others] = rest) {
    const wanted = amount.minus(massOf(parts));
    const allowed = acid.minus(acidOf(parts));
    parts.push({ from: lot, taken: mostOf(lot, others, wanted, allowed) });
    rest = others;
  }
  const lots = takenOf(parts);
  return { kind: "mix", lots, acidValue: mixed(lots) };
}
