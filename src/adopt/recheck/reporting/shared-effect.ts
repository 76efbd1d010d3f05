/**
 * Several mistakes in one row: what its lye is off is told of all of them together, and of each what it
 * makes of that. The parts add up to the whole, or none is told.
 */
import type { MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import type { Ways } from "../arithmetic/ways";
import type { CheckedFigure } from "../judging/checked";
import { keyOf } from "../judging/slips";
import type { Readings } from "../reading/readings";
import { effectOf, lyeBy } from "./effect";
import { doseState, type FinalDose, finalDose } from "./final-dose";
import type { Finding } from "./finding";

interface Row {
  readonly readings: Readings;
  readonly figures: readonly CheckedFigure[];
  readonly columns: ReadonlyMap<RoleId, MappedColumn>;
  /** g of lye that it should have had. */
  readonly right: number | undefined;
  /** This maker's constants beside ours. */
  readonly makersShare: number;
}

interface Off extends Row {
  readonly right: number;
  readonly dose: FinalDose;
  /** g that were weighed out, where that is another amount than was worked out. */
  readonly weighed: number | undefined;
}

/** Two mistakes in one figure are one cause. */
const causeIn = ({ mistake, also }: Pick<Finding, "mistake" | "also">): string =>
  also === undefined ? mistake : `${mistake},${also}`;

type Cause = readonly [string, Ways];

/** How each works a row out; not of what stands there instead of a figure. */
const knownCauses = (figures: readonly CheckedFigure[]): Cause[] => [
  ...new Map(
    figures.flatMap(({ verdict }) =>
      verdict.kind === "wrong" && verdict.slip && !verdict.slip.ways.result
        ? [[keyOf(verdict.slip), verdict.slip.ways] as const]
        : [],
    ),
  ),
];

/** All choices of causes, those of few first, each in the order in which they stand. */
function choicesOf(causes: readonly Cause[]): Cause[][] {
  const all = causes.reduce<Cause[][]>(
    (so, each) => [...so, ...so.map((chosen) => [...chosen, each])],
    [[]],
  );
  return all.sort((one, other) => one.length - other.length);
}

/** More are never one row's: choices double with each. */
const mostCauses = 4;
/** Rounding on the way and other constants. */
const conventional = 0.004;

const made = (causes: readonly Cause[]): Ways =>
  causes.reduce<Ways>((so, [, ways]) => ({ ...so, ...ways }), {});

/** What each makes of a dose that some of them give: one after the other, as the row is worked out. */
function partsOfDose({ readings, figures, dose, right, makersShare }: Off) {
  const causes = knownCauses(figures);
  if (causes.length > mostCauses) return undefined;
  const gramsBy = (chosen: readonly Cause[]): number =>
    (lyeBy(readings, made(chosen)) ?? NaN) * makersShare;
  const allowed = dose.half + conventional * dose.grams;
  const given = choicesOf(causes).find(
    (chosen) => Math.abs(gramsBy(chosen) - dose.grams) <= allowed,
  );
  if (!given) return undefined;
  const parts = new Map<string, number>();
  let so = right;
  given.forEach(([key], at) => {
    const next = at === given.length - 1 ? dose.grams : gramsBy(given.slice(0, at + 1));
    parts.set(key, next - so);
    so = next;
  });
  return parts;
}

function partsOf(off: Off, causes: readonly string[]): ReadonlyMap<string, number> | undefined {
  const { dose, right, weighed } = off;
  const ofDose = causes.filter((each) => each !== "weighed-otherwise");
  const [first, ...others] = ofDose;
  const parts =
    first !== undefined && others.length === 0
      ? new Map([[first, dose.grams - right]])
      : partsOfDose(off);
  if (parts && weighed !== undefined) parts.set("weighed-otherwise", weighed - dose.grams);
  return parts;
}

/** The row's dose, where it was worked out. */
function offOf(row: Row, findings: readonly Finding[]): Off | undefined {
  const { readings, figures, columns, right } = row;
  const state = doseState(figures);
  const dose = finalDose(readings, figures, columns);
  if (!dose || right === undefined || (state !== "agrees" && state !== "differs")) return undefined;
  const isOtherwise = findings.some(({ mistake }) => mistake === "weighed-otherwise");
  const weighed = isOtherwise ? readings.held.get("weighed")?.value : undefined;
  return { ...row, right, dose, weighed };
}

/** The findings of one row; as they are where they have one cause, or no dose to be off. */
export function withSharedEffect(findings: readonly Finding[], row: Row): readonly Finding[] {
  const causes = [...new Set(findings.map(causeIn))];
  const off = causes.length < 2 ? undefined : offOf(row, findings);
  const whole = off && effectOf(off.readings, (off.weighed ?? off.dose.grams) - off.right);
  if (!off || !whole) return findings;
  // What may be one mistake or another makes no part of its own.
  const isSure = findings.every(({ orElse = [] }) => orElse.length === 0);
  const parts = isSure ? partsOf(off, causes) : undefined;
  return findings.map((each) => {
    const ofIt = parts && (parts.get(causeIn(each)) ?? 0);
    return { ...each, effect: { ...whole, together: { ofIt } } };
  });
}
