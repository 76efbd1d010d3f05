/** The outlier test of the core, in helper cells. */
import { one } from "../../../core/exact/exact";
import { usualSteps } from "../../../core/replicates/step";
import type { TwinArgument } from "../../../functions/twin";
import { cellsOf } from "./list";
import type { Reading } from "./reading";
import type { ReplicateColumns } from "./replicate-columns";
import { areEqual } from "./scatter";
import { and, figure, when } from "./text";

/** Part of a reading that two doubles of the same decimals may differ by. */
const rounding = "1E-14";

const finest = usualSteps[usualSteps.length - 1] ?? one;

/**
 * The step as given, or the coarsest usual one of which all readings are multiples: counted in the
 * finest step, it divides the greatest common divisor of the readings.
 */
function stepOf(reading: Reading, { read }: ReplicateColumns): string {
  if (reading.call.argument("step")) return reading.figure("step", usualStep(reading, read));
  return usualStep(reading, read);
}

/** The coarsest usual step of which all figures are multiples; 0 where none is. */
export function usualStep(
  reading: Reading,
  read: Pick<TwinArgument, "rows" | "columns" | "cell">,
): string {
  const { helper, helperColumn } = reading.call;
  const counted = helperColumn(
    `reading, in steps of ${figure(finest)} mL; empty where it is none`,
    cellsOf(read).map((cell) => {
      const steps = `${cell}/${figure(finest)}`;
      const isNone = `ABS(${steps}-ROUND(${steps},0))>${rounding}*${steps}`;
      return when(`${cell}=""`, "0", when(isNone, '""', `ROUND(${steps},0)`));
    }),
  );
  const divisor = helper(
    "greatest common divisor of the readings, in those steps",
    when(`COUNT(${counted.text})<${counted.rows}`, "0", `GCD(${counted.text})`),
  );
  const fitting = usualSteps.reduceRight(
    (otherwise, step) =>
      when(`MOD(${divisor},${figure(step.div(finest))})=0`, figure(step), otherwise),
    "0",
  );
  return helper("step that all readings fit, mL", when(`${divisor}=0`, "0", fitting));
}

export interface TestText {
  /** As given, or the one all readings fit, mL. */
  readonly step: string;
  /** TRUE where there is something to test. */
  readonly isTested: string;
  /** Place of the reading farthest from the mean, counted from 1. */
  readonly place: string;
  /** How far that is, mL, and whether another lies as far. */
  readonly farthest: string;
  readonly isTied: string;
  readonly plain: string;
  readonly graduated: string;
  readonly critical: string;
  readonly probability: string;
}

/** Two deviations that differ by less than this part are the same: the first counts. */
const tie = "0.9999999999";
/** Below this part of the largest G there can be, a G is that G. */
const atTheBound = "1E-12";

/** Grubbs' test with allowance for the graduation, as in the core. */
export function outlierText(reading: Reading, columns: ReplicateColumns): TestText {
  const { judged, count: n, mean, deviation: s, risk } = columns;
  const { helper, helperColumn } = reading.call;
  const step = stepOf(reading, columns);
  const isTested = helper(
    "is there anything to test?",
    and(`${n}>=3`, `NOT(${areEqual(judged.text)})`),
  );
  const off = helperColumn(
    "distance from the mean, mL",
    cellsOf(judged).map((cell) => when(`${cell}=""`, '""', `ABS(${cell}-${mean})`)),
  );
  const farthest = helper("largest distance, mL", `MAX(${off.text})`);
  const places = helperColumn(
    "place of a reading as far as any",
    cellsOf(off).map((cell, place) =>
      when(`${cell}=""`, '""', when(`${cell}>=${farthest}*${tie}`, String(place + 1), '""')),
    ),
  );
  const plain = helper("G", when(isTested, `${farthest}/${s}`, "0"));
  const t = helper("Student t", when(isTested, `TINV(${risk}/${n},${n}-2)`, "0"));
  const squared = `${n}*${plain}^2`;
  const below = `((${n}-1)^2-${squared})`;
  const tOfG = `SQRT((${n}-2)*${squared}/${below})`;
  const tail = `MIN(1,${n}*TDIST(${tOfG},${n}-2,2))`;
  return {
    step,
    isTested,
    place: helper("place of the first reading as far as any", `MIN(${places.text})`),
    farthest,
    isTied: `COUNT(${places.text})>1`,
    plain,
    graduated: helper(
      "G with graduation",
      when(isTested, `${farthest}/SQRT(${s}^2+${step}^2/6)`, "0"),
    ),
    critical: helper(
      "critical G",
      when(isTested, `(${n}-1)/SQRT(${n})*SQRT(${t}^2/(${n}-2+${t}^2))`, "0"),
    ),
    probability: when(`${below}>${atTheBound}*${squared}`, tail, "0"),
  };
}
