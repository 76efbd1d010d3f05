/** The known mistakes as ways of working a figure of a row out: one at a time, or two together. */
import type { RoleId } from "../../recognising/roles";
import type { FormulaFacts } from "../reading/formula-facts";
import { type MistakeId, mistakeOf, mistakes } from "../mistakes/all";
import type { Readings } from "../reading/readings";
import { isDose } from "../mistakes/mistake";
import type { Ways } from "../arithmetic/ways";

export interface Slip {
  /** One mistake, or two, each with its own way. */
  readonly made: readonly { readonly id: MistakeId; readonly ways: Ways }[];
  readonly ways: Ways;
}

export const idsOf = ({ made }: Slip): readonly MistakeId[] => made.map(({ id }) => id);
export const keyOf = (slip: Slip): string => idsOf(slip).join();

/** The same for two mistakes whichever was thought of first. */
export const causeOf = (slip: Slip): string => [...idsOf(slip)].sort().join();

const slipsOf = (role: RoleId, r: Readings): Slip[] =>
  mistakes.flatMap(({ id, ways }) =>
    ways(role, r).map((each) => ({ made: [{ id, ways: each }], ways: each })),
  );

/** A wrong figure is looked at three or four times. */
const known = new WeakMap<Readings, Map<RoleId, readonly Slip[]>>();

export function slipsFor(role: RoleId, r: Readings): readonly Slip[] {
  const ofRow = known.get(r) ?? new Map<RoleId, readonly Slip[]>();
  known.set(r, ofRow);
  const slips = ofRow.get(role) ?? slipsOf(role, r);
  ofRow.set(role, slips);
  return slips;
}

const isOtherBase = ({ ways }: Slip): boolean =>
  ways.otherBase !== undefined && ways.chargeScale !== undefined;
const isWeighing = ({ ways }: Slip): boolean => ways.weighing !== undefined;

/** How two are made together; undefined where one undoes the other or stands in its place. */
export function waysTogether(one: Slip, other: Slip): Ways | undefined {
  if (one.made[0]?.id === other.made[0]?.id) return undefined;
  // Figures of another base all through: besides, only the assay may be forgotten.
  const isThrough = isOtherBase(one) || isOtherBase(other);
  if (isThrough && !isWeighing(one) && !isWeighing(other)) return undefined;
  for (const key in one.ways) if (key in other.ways) return undefined;
  return { ...one.ways, ...other.ways };
}

/** Those that may be one of two in a figure. */
export const pairableIn =
  (role: RoleId) =>
  ({ made }: Slip): boolean =>
    made.every(({ id }) => {
      const { isAlone } = mistakeOf(id);
      return isAlone === undefined || (isAlone === "in doses" && !isDose(role));
    });

export const shows = (id: MistakeId, facts: FormulaFacts): boolean =>
  mistakeOf(id).shows?.(facts) ?? false;

/** How many of a slip's mistakes the formula shows. */
export const shown = ({ made }: Slip, facts: FormulaFacts | undefined): number =>
  facts === undefined ? 0 : made.filter(({ id }) => shows(id, facts)).length;
