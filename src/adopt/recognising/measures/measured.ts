/**
 * Units as the book means them: a gallon or a fluid ounce is that of the one nation the book names, a drop
 * or a cup as large as was answered.
 */
import {
  isBare,
  isSized,
  measureNamed,
  type Nation,
  nations,
} from "../../../core/quantity/measures";
import { type RoleId, roleOf } from "../roles";
import type { LogbookMapping, SizeUnit } from "../shape";

import { typedFigure } from "../typed-number";
import { needsUnit } from "./units-of-roles";

export type { SizeUnit } from "../shape";

interface InUnit {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly times?: number;
}

/** The nation whose measures a book names; undefined where it names none, or both. */
export function nationOf(all: readonly Pick<InUnit, "unit">[]): Nation | undefined {
  const named = nations.filter((nation) => all.some(({ unit }) => unit?.startsWith(`${nation} `)));
  return named.length === 1 ? named[0] : undefined;
}

/** In what a role's drops and cups are counted. */
export const sizedIn = (role: RoleId): SizeUnit => {
  const [first = ""] = roleOf(role).units;
  return first === "L" || first === "g" ? first : "mL";
};

export const sizeTyped = ({ answers = [] }: LogbookMapping, word: string, unit: SizeUnit): string =>
  answers.flatMap((each) =>
    each.ask === "size" && each.word === word && each.in === unit ? [each.size] : [],
  )[0] ?? "";

/** Once for a logbook, before anything is worked out by it. */
export function measured(mapping: LogbookMapping): LogbookMapping {
  const nation = nationOf([...mapping.columns, ...mapping.constants]);
  const said = <T extends InUnit>(each: T): T => {
    if (nation && isBare(each.unit)) return { ...each, unit: `${nation} ${each.unit}` };
    if (!isSized(each.unit)) return each;
    const size = typedFigure(sizeTyped(mapping, each.unit, sizedIn(each.role)));
    return size !== undefined && size > 0 ? { ...each, times: size } : each;
  };
  return { ...mapping, columns: mapping.columns.map(said), constants: mapping.constants.map(said) };
}

/** A figure in nobody knows which unit is none. */
export const isUnitUnsaid = ({ role, unit, times }: InUnit): boolean =>
  (unit === undefined && needsUnit(role)) || isBare(unit) || (isSized(unit) && times === undefined);

/** How many of a role's own unit (g, mL or L) one of the unit is; 1 where it is no measure. */
export function timesOwn({ role, unit, times }: InUnit): number {
  if (times !== undefined) return times;
  const [own] = roleOf(role).units;
  const [one, of] = [measureNamed(unit)?.factor, measureNamed(own)?.factor];
  return one && of ? one.div(of).toNumber() : 1;
}

/** Is some column of these roles in another unit than their own, or in none that is known? */
export const isInOtherThanOwn = ({ columns }: LogbookMapping, roles: readonly RoleId[]): boolean =>
  columns.some((each) => roles.includes(each.role) && (isUnitUnsaid(each) || timesOwn(each) !== 1));
