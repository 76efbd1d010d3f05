/**
 * Methanol, or fuel, under a heading that names no unit, beside oil that is not in litres: which unit makes a
 * usual share of the oil is told by the figures, and nobody is sure of it.
 */
import { isBare, measureNamed } from "../../../core/quantity/measures";
import type { Candidate, RoleScore } from "../context";
import { median } from "../numbers-of-column";
import type { RoleId } from "../roles";
import { unitOfColumn } from "./units-of-roles";

/** Parts of the oil's volume that are put in, or come out. Common practice, no source. */
const shares: Readonly<Partial<Record<RoleId, readonly [number, number]>>> = {
  methanol: [0.1, 0.5],
  litresMade: [0.5, 1.2],
};
const goesByOil = (role: RoleId): boolean => shares[role] !== undefined;

/** kg/L, near enough to tell units apart */
const density = 0.915;

/** Litres of oil in one of a unit; a bare gallon is about a US one. */
function litresIn(unit: string): number | undefined {
  const measure = measureNamed(isBare(unit) ? `US ${unit}` : unit);
  const factor = measure?.factor?.toNumber();
  if (!measure || factor === undefined) return undefined;
  return measure.measures === "volume" ? factor / 1000 : factor / 1000 / density;
}

interface InTable {
  readonly unit: string | undefined;
  readonly isDoubtful: boolean;
}

/**
 * @param role of a column whose heading names no unit
 * @param unit what its role is usually in
 * @param times how many times the oil's figures its own are
 */
function unitBesideOil(
  role: RoleId,
  unit: string | undefined,
  ofOil: string | undefined,
  times: number,
): InTable {
  const [least = 0, most = 0] = shares[role] ?? [];
  if (ofOil === unit) return { unit, isDoubtful: false };
  const litres = ofOil === undefined ? undefined : litresIn(ofOil);
  if (ofOil === undefined || litres === undefined) return { unit, isDoubtful: true };
  const isUsual = (share: number): boolean => share >= least && share <= most;
  const isLikeOil = isUsual(times) && !isUsual(times / litres);
  return { unit: isLikeOil ? ofOil : unit, isDoubtful: true };
}

export const noUnit: InTable = { unit: undefined, isDoubtful: false };

/** The unit of each column that has a role. */
export function unitsInTable(
  all: readonly { readonly candidate: Candidate }[],
  settled: ReadonlyMap<number, RoleScore>,
): ReadonlyMap<number, InTable> {
  const named = ({ column, parts, facts }: Candidate): string | undefined =>
    unitOfColumn(settled.get(column)?.role ?? "other", parts, facts);
  const oil = all.find(({ candidate }) => settled.get(candidate.column)?.role === "oilAmount");
  return new Map(
    all.map(({ candidate }) => {
      const role = settled.get(candidate.column)?.role ?? "other";
      const unit = named(candidate);
      if (!oil || !goesByOil(role) || candidate.parts.unit !== undefined)
        return [candidate.column, { unit, isDoubtful: false }] as const;
      const times = median(candidate.facts.numbers) / median(oil.candidate.facts.numbers);
      return [candidate.column, unitBesideOil(role, unit, named(oil.candidate), times)] as const;
    }),
  );
}
