/**
 * Methanol against its oil, by mole. The reaction uses up three moles for each of the oil; what makers put in
 * beside is their choice, and is told, not judged: only what cannot be all of it, or is far off, is asked about.
 */
import { methanolVolume } from "../../../core/batch/methanol";
import { oilMass } from "../../../core/batch/oil-mass";
import { exact } from "../../../core/exact/exact";
import { isProblem } from "../../../core/problem/problem";
import { quantity } from "../../../core/quantity/quantity";
import { usual } from "../../../core/reference/defaults";
import { sources } from "../../../core/reference/sources";
import { acidValue, ffaPercent, fromNothing } from "../arithmetic/row-arithmetic";
import type { MethanolReader } from "../reading/read-methanol";
import type { Readings } from "../reading/readings";
import type { MethanolKind, MethanolSeen, OddMethanol } from "./finding";
import { rowsInWords } from "./unchecked";

/** Moles that the reaction uses up for each of triglyceride (by definition). */
const usedUp = 3;
/** Twice the usual 6:1: 50 L for 100 L of oil (common practice, no source). */
const far = usual.molarRatio.toNumber() * 2;
/** In so many rows it is the column that is doubted, and no row. */
const rowsOfAColumn = 5;

/** undefined: the row does not say enough, or is one that the acid step comes before. */
function ratioOf(litres: number, r: Readings): number | undefined {
  if (!r.amount) return undefined;
  const kilograms = oilMass(exact(r.amount.value), r.amount.unit, r.oil);
  if (isProblem(kilograms)) return undefined;
  const value = acidValue(r, {}, fromNothing);
  const acid = value === undefined || value <= 0 ? undefined : quantity("mg KOH/g", value);
  const forOne = methanolVolume(kilograms, quantity("mol/mol", 1), acid, r.oil);
  return isProblem(forOne) || forOne.lte(0) ? undefined : litres / forOne.toNumber();
}

export class MethanolLook {
  private readonly seen: { row: number; ratio: number }[] = [];

  constructor(
    private readonly sheet: string,
    private readonly read: MethanolReader | undefined,
  ) {}

  look(readings: Readings): void {
    const litres = this.read?.litres(readings.row);
    if (litres === undefined) return;
    const acid = ffaPercent(readings, {}, fromNothing);
    if (acid !== undefined && acid > usual.limitFfa.toNumber()) return;
    const ratio = ratioOf(litres, readings);
    if (ratio !== undefined) this.seen.push({ row: readings.row, ratio });
  }

  found(): MethanolSeen[] {
    const { sheet, seen } = this;
    if (seen.length === 0) return [];
    const of = (kind: MethanolKind, rows: typeof seen): OddMethanol[] =>
      rows.length === 0
        ? []
        : [{ kind, rows: rows.map(({ row }) => row), ratios: rows.map(({ ratio }) => ratio) }];
    const little = this.read?.isPart ? [] : seen.filter(({ ratio }) => ratio < usedUp);
    const much = seen.filter(({ ratio }) => ratio > far);
    const isColumn = (rows: typeof seen): boolean =>
      rows.length >= rowsOfAColumn && rows.length * 2 > seen.length;
    const told = (kind: MethanolKind, rows: typeof seen) =>
      of(isColumn(rows) ? "column" : kind, rows);
    return [
      {
        sheet,
        ratios: seen.map(({ ratio }) => ratio),
        odd: [...told("little", little), ...told("much", much)],
      },
    ];
  }
}

const from = (list: readonly number[]): number => list.reduce((one, other) => Math.min(one, other));
const to = (list: readonly number[]): number => list.reduce((one, other) => Math.max(one, other));
const figure = (value: number): string => String(Number(value.toPrecision(2)));

/** "4.4:1 to 6.2:1" */
function ratioWords(ratios: readonly number[]): string {
  const [least, most] = [figure(from(ratios)), figure(to(ratios))];
  return least === most ? `${least}:1` : `${least}:1 to ${most}:1`;
}

/** One sentence for each kind of odd rows. */
export const oddMethanolWords = ({ odd, isAcross }: MethanolSeen): readonly string[] =>
  odd.map(({ kind, rows, ratios }) => {
    const of = `Methanol is ${ratioWords(ratios)} to the oil by mole`;
    const where = `(${rowsInWords(rows, isAcross)})`;
    if (kind === "column")
      return `${of} in most rows, and the reaction uses up ${String(usedUp)}:1: is the column in another unit, or a part of it? ${where}`;
    return kind === "little"
      ? `${of}, less than the ${String(usedUp)}:1 that the reaction uses up: was more put in, or is the figure in another unit? ${where}`
      : `${of}, more than twice the usual ${usual.molarRatio.toString()}:1: is a digit or the unit another? ${where}`;
  });

/** What was seen in all rows that are not odd, beside what is usual. */
export function methanolWords({ ratios, odd }: MethanolSeen): string {
  const all = `Methanol to oil by mole, ${String(ratios.length)} row${ratios.length === 1 ? "" : "s"} looked at: ${ratioWords(ratios)}.`;
  return odd.length > 0
    ? all
    : `${all} Usual is ${usual.molarRatio.toString()}:1, 25 L for 100 L of oil (${sources.freedman}); 20 L, 4.8:1, is common practice, no source.`;
}
