/** The mix chosen from what is in store: which lots, how much of each, what is left after it. */
import { densityAt } from "../../core/batch/density";
import { chooseMix, type StoredLot } from "../../core/batch/mix-choice";
import { mixShares } from "../../core/batch/mix-shares";
import { oilMass } from "../../core/batch/oil-mass";
import { type Exact, exact, hundred } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { type AcidValue, as, type Kilogram, type Percent } from "../../core/quantity/quantity";
import { type Oil, oilNamed, oilNotNamed } from "../../core/reference/oils";
import { acidValueFromFfa, ffaAsOleic } from "../../core/titration/free-fatty-acid";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { LotInStore } from "../../workbook/planning/read-store";
import { lotMark } from "../lots/lot-mark";
import { notYetOf } from "../lots/not-yet";
import { type ChosenLot, mostLots } from "./draft";
import { isEmpty } from "./left-in-store";
import type { Picked } from "./picks";
import type { Seen } from "./seen";
import { unitOf } from "./working";

/** A lot that can be counted with, and its kind of oil. */
interface Counted extends StoredLot {
  readonly oil: Oil;
}

export interface StoreLine {
  readonly lot: string;
  /** In the unit the batch is measured in. */
  readonly taken: Exact;
  readonly after: Exact;
}

export type StoreFound =
  | { readonly kind: "too little"; readonly left: Exact }
  | { readonly kind: "too many"; readonly count: number }
  | {
      readonly kind: "mix" | "too sour";
      readonly lines: readonly StoreLine[];
      readonly acidValue: AcidValue;
      readonly ffa: Percent;
      /** As the list of lots takes them. */
      readonly chosen: readonly ChosenLot[];
    };

export const ruleWords: Readonly<Record<Picked["mixRule"], string>> = {
  "least acid first": "The lot with the least acid is used up first, then the next.",
  "oldest first": "The oldest lot goes in as far as the acid allows, then the next.",
};

const isLot = (name: string) => (each: { readonly lot: string }) =>
  each.lot.toLowerCase() === name.toLowerCase();

/** A titrant of this lye, taken as pure, shows too much acid: as in the mix itself. */
function acidOf({ acidValue, isAsIfPure }: RecordedLot, { draft, figures }: Seen) {
  if (acidValue === undefined) return undefined;
  const assay = figures.value("assay");
  const isLess = draft.picked.titrantLye === "same" && isAsIfPure && assay !== undefined;
  return as("mg KOH/g", exact(acidValue).times(isLess ? assay.div(hundred) : 1));
}

/** A lot to count with, why it cannot be, or nothing where none of it is left. */
function countedOf(
  { lot, litresLeft, collected }: LotInStore,
  seen: Seen,
): Counted | string | undefined {
  if (litresLeft !== undefined && litresLeft <= 0) return undefined;
  const recorded = seen.recorded.find((each) => isLot(lot)({ lot: lotMark(each) }));
  if (recorded === undefined) return `${lot} is not titrated`;
  const acidValue = acidOf(recorded, seen);
  if (acidValue === undefined) return `${lot} has no acid value`;
  if (notYetOf(recorded) !== "") return `${lot} is not good enough yet`;
  if (litresLeft === undefined) return `${lot} has no litres in Lots`;
  const oil = oilNamed(recorded.oil) ?? oilNotNamed;
  const density = densityAt(oil);
  if (isProblem(density)) return `${lot} is solid, and cannot be counted in litres`;
  const left = as("kg", exact(litresLeft).times(density));
  // as the list of lots has it: capitals may differ
  return { lot: lotMark(recorded), acidValue, left, collected, oil };
}

/** The kilograms of the batch, its volume counted as of this kind of oil. */
function massAs(oil: Oil, { draft, figures }: Seen): Kilogram | undefined {
  const amount = figures.value("amount");
  const found = amount && oilMass(amount, unitOf(draft), oil, figures.in("C", "temperature"));
  return found === undefined || isProblem(found) ? undefined : found;
}

/** Nobody pumps the dregs of a drum into a batch. */
const dregs = "0.01";

function inStore(seen: Seen, store: readonly LotInStore[]): readonly (Counted | string)[] {
  return store.flatMap((each) => {
    const found = countedOf(each, seen);
    if (typeof found !== "object") return found ?? [];
    const mass = massAs(found.oil, seen);
    if (mass === undefined || found.left.gte(mass.times(exact(dregs)))) return found;
    return isEmpty(each) ? `${found.lot}: empty` : `of ${found.lot} only dregs are left`;
  });
}

/** Why lots of the table are left out, one after another. */
export const leftOut = (seen: Seen, store: readonly LotInStore[]): readonly string[] =>
  inStore(seen, store).filter((each) => typeof each === "string");

function mostAcid({ draft, figures }: Seen): AcidValue | undefined {
  if (draft.picked.mostAcidIn === "acid value") return figures.in("mg KOH/g", "mostAcid");
  const ffa = figures.in("%", "mostAcid");
  const found = ffa && acidValueFromFfa(ffa);
  return found === undefined || isProblem(found) ? undefined : found;
}

/** @returns undefined while the amount or the acid is not typed, or the amount cannot be weighed out */
export function fromStore(seen: Seen, store: readonly LotInStore[]): StoreFound | undefined {
  const { draft } = seen;
  const lots = inStore(seen, store).filter((each): each is Counted => typeof each === "object");
  const target = mostAcid(seen);
  if (target === undefined) return undefined;
  const unit = unitOf(draft);
  /** A mass in the batch's unit, at 20 C as the table has it. */
  const shown = (mass: Kilogram, oil: Oil): Exact => {
    const density = unit.measures === "volume" ? densityAt(oil) : exact(1);
    return mass.div(isProblem(density) ? 1 : density).div(unit.factor);
  };
  const oilOf = (name: string | undefined): Oil => lots.find(isLot(name ?? ""))?.oil ?? oilNotNamed;
  const choose = (oil: Oil) => {
    const mass = massAs(oil, seen);
    if (mass === undefined) return undefined;
    const choice = chooseMix(lots, mass, target, draft.picked.mixRule);
    if (choice.kind === "too little") return { choice, oil };
    const most = choice.kind === "mix" ? target : undefined;
    return { choice, oil, shares: mixShares(choice.lots, mass, most) };
  };
  const first = choose(lots[0]?.oil ?? oilNotNamed);
  // a volume is counted as the first lot's kind of oil, and that may be another than it was taken for
  const kind = oilOf(first?.shares?.[0]?.lot);
  const found = first?.shares && kind !== first.oil ? choose(kind) : first;
  if (found === undefined) return undefined;
  const { choice, shares } = found;
  if (choice.kind === "too little") return { kind: "too little", left: shown(choice.left, kind) };
  if (shares === undefined || shares.length > mostLots)
    return { kind: "too many", count: choice.lots.length };
  return {
    kind: choice.kind,
    acidValue: choice.acidValue,
    ffa: as("%", ffaAsOleic(choice.acidValue)),
    lines: shares.map(({ lot, taken, after }) => ({
      lot,
      taken: shown(taken, oilOf(lot)),
      after: shown(after, oilOf(lot)),
    })),
    chosen: shares.map(({ lot, percent }, at) => ({
      lot,
      share: at === shares.length - 1 ? "" : percent.toFixed(),
    })),
  };
}
