/** What the table Lots says is left of the lots in hand, against what this batch takes of them. */
import { densityAt } from "../../core/batch/density";
import { type Exact, exact, hundred } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import { oilNamed, oilNotNamed } from "../../core/reference/oils";
import type { LotInStore } from "../../workbook/planning/read-store";
import { lotMark } from "../lots/lot-mark";
import { digits } from "../widgets/shown-number";
import { withMark } from "../widgets/typed-number";
import type { MixedLot } from "./mix";
import type { Seen } from "./seen";
import { unitOf } from "./working";

type Store = readonly LotInStore[];

/** The table shows whole litres: what it shows as 0 is nothing to a batch. */
export const isEmpty = ({ litresLeft }: Pick<LotInStore, "litresLeft">): boolean =>
  litresLeft !== undefined && litresLeft < 0.5;

const storedAs = (lot: string, store: Store): LotInStore | undefined =>
  store.find((each) => each.lot.toLowerCase() === lot.toLowerCase());

/** The table says that none of it is left; not where it says nothing. */
export const isUsedUp = (lot: string, store: Store): boolean => {
  const stored = storedAs(lot, store);
  return stored !== undefined && isEmpty(stored);
};

/** Shares and densities round: so little is no lack. */
const nearly = "1.001";

/** One lot of the mix, of which less is left than it gives. */
function lackOf(
  { recorded, percent }: MixedLot,
  { whole, isAlone, seen }: { whole: Exact; isAlone: boolean; seen: Seen },
  store: Store,
): string[] {
  const { draft, mark, working } = seen;
  const lot = lotMark(recorded);
  const left = storedAs(lot, store)?.litresLeft;
  const density = densityAt(oilNamed(recorded.oil) ?? oilNotNamed);
  const mass = working.oilMass;
  if (left === undefined || isProblem(density) || !mass || isProblem(mass)) return [];
  const unit = unitOf(draft);
  const kilograms = exact(Math.max(0, left)).times(density);
  if (as("kg", mass.times(percent).div(hundred)).lte(kilograms.times(nearly))) return [];
  const shown = (amount: Exact): string => `${withMark(digits(amount, 4), mark)} ${unit.shown}`;
  const inUnit = (unit.measures === "volume" ? kilograms.div(density) : kilograms).div(unit.factor);
  const part = whole.times(percent).div(hundred);
  // in whole ones as the table shows it, where those tell it from what is taken
  const short = inUnit.gte(10) && inUnit.toDecimalPlaces(0).lt(part);
  const is = isEmpty({ litresLeft: left })
    ? `Nothing of ${lot} is left`
    : `Only ${shown(short ? inUnit.toDecimalPlaces(0) : inUnit)} of ${lot} are left`;
  return [`${is}: ${isAlone ? `you typed ${shown(part)}` : `this takes ${shown(part)}`}.`];
}

/**
 * A sentence for each lot that has not so much left. Nobody is stopped: the table may be behind.
 * @returns none for a batch on record, whose part is taken off there already
 */
export function lacksInStore(seen: Seen, store: Store): readonly string[] {
  const { mix } = seen.working;
  const whole = seen.figures.value("amount");
  if (seen.draft.isRecorded || !whole || !mix || isProblem(mix)) return [];
  const of = { whole, isAlone: mix.lots.length === 1, seen };
  return mix.lots.flatMap((lot) => lackOf(lot, of, store));
}
