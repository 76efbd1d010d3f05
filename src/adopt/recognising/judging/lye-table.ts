/** What a table says of lye and oil, in grams and litres row by row, from the columns that are settled. */
import { isBare, measureNamed } from "../../../core/quantity/measures";
import type { Candidate, RoleScore } from "../context";
import { unitOfColumn } from "../measures/units-of-roles";
import { median } from "../numbers-of-column";
import type { RoleId } from "../roles";

export type Figures = readonly (number | undefined)[];

export interface LyeTable {
  /** How many times a rate was given: litres, or kilograms, or tens of grams for a percentage. */
  readonly oilFor: (unit: string) => Figures;
  readonly total: Figures | undefined;
  /** For the reaction alone: written down, or what is left of the whole without the acid's part. */
  readonly reaction: Figures | undefined;
  /** What is titrated with stands elsewhere, or nothing is titrated here. */
  readonly hasTitrantElsewhere: boolean;
}

const near = 0.035;
/** Kilograms in a litre, near enough to tell roles apart. */
const density = 0.915;

const each = (one: Figures, other: Figures, of: (a: number, b: number) => number): Figures =>
  one.map((value, at) => {
    const second = other[at];
    return value === undefined || second === undefined ? undefined : of(value, second);
  });

export const times = (one: Figures, other: Figures): Figures => each(one, other, (a, b) => a * b);

export const ratios = (one: Figures, other: Figures): number[] =>
  each(one, other, (a, b) => (b > 0 ? a / b : NaN)).filter(
    (value): value is number => value !== undefined && Number.isFinite(value),
  );

/** The ratio that most rows have; undefined where they have none. */
export function steadyRatio(one: Figures, other: Figures): number | undefined {
  const found = ratios(one, other);
  if (found.length < 3) return undefined;
  const middle = median(found);
  const alike = found.filter((ratio) => Math.abs(ratio / middle - 1) <= near).length;
  return alike / found.length >= 0.75 ? middle : undefined;
}

const inOwn: Readonly<Record<string, number>> = { "g/L": 1, "g/kg": density, "%": density * 10 };

/** @param but the column that is judged: it is no witness of its own */
export function lyeTable(
  all: readonly { readonly candidate: Candidate }[],
  settled: ReadonlyMap<number, RoleScore>,
  figures: ReadonlyMap<number, Figures>,
  but: number,
): LyeTable {
  const found = (role: RoleId): Candidate | undefined =>
    all.find(({ candidate: { column } }) => column !== but && settled.get(column)?.role === role)
      ?.candidate;
  // a figure times what one of its unit is, in thousandths of a kilogram or a litre
  const inSmall = (role: RoleId): Figures | undefined => {
    const candidate = found(role);
    if (!candidate) return undefined;
    const unit = unitOfColumn(role, candidate.parts, candidate.facts) ?? "";
    const measure = measureNamed(isBare(unit) ? `US ${unit}` : unit);
    const factor = measure?.factor?.toNumber();
    if (!measure || factor === undefined) return undefined;
    const ofOil = role === "oilAmount" || role === "oilMass" ? 0.001 : 1;
    const asLitres = ofOil === 1 || measure.measures === "volume" ? 1 : 1 / density;
    const own = figures.get(candidate.column) ?? [];
    return own.map((value) =>
      value === undefined ? undefined : value * factor * ofOil * asLitres,
    );
  };
  const litres = inSmall("oilAmount") ?? inSmall("oilMass") ?? [];
  const total = inSmall("catalyst") ?? inSmall("weighed");
  const acid = inSmall("acidDose");
  const left = total && acid ? each(total, acid, (a, b) => a - b) : undefined;
  return {
    oilFor: (unit) =>
      litres.map((value) => (value === undefined ? undefined : value * (inOwn[unit] ?? NaN))),
    total,
    reaction: inSmall("reactionDose") ?? left,
    hasTitrantElsewhere:
      found("strength") !== undefined || found("molarity") !== undefined || !found("titre"),
  };
}
