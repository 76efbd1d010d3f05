/** What a set of replicates is worth, in helper cells, as the core judges it. */
import { threeDrops, threeSteps } from "../../../core/reference/agreement";
import type { TwinArgument } from "../../../functions/twin";
import { cellsOf } from "./list";
import { outlierText, type TestText } from "./outlier-text";
import type { Reading } from "./reading";
import type { ReplicateColumns } from "./replicate-columns";
import { and, atMost, figure, never, text, when } from "./text";

export interface JudgementText {
  readonly test: TestText;
  /** TRUE where a usual scatter is given. */
  readonly hasRecord: string;
  /** mL; 0 where none is given. */
  readonly usual: string;
  readonly usualFreedom: string;
  /** Place of the suspect reading, counted from 1; 0 where there is none. */
  readonly suspect: string;
  /** The judged readings but the suspect one. */
  readonly others: TwinArgument;
  /** What counts as agreement, mL. */
  readonly allowed: string;
  /** TRUE where those that are not suspect agree. */
  readonly agree: string;
}

const zero = "0";

/** The two arguments of the record: both or neither. */
function recordOf(reading: Reading): { usual: string; freedom: string; hasRecord: string } {
  const usual = reading.figure("usualScatter", zero);
  const freedom = reading.figure("usualFreedom", zero);
  if (usual === zero && freedom === zero) return { usual, freedom, hasRecord: never };
  reading.needs(`(${usual}=0)<>(${freedom}=0)`);
  if (freedom !== zero) reading.allow(`INT(${freedom})=${freedom}`);
  return { usual, freedom, hasRecord: `${usual}>0` };
}

export function judgementText(reading: Reading, columns: ReplicateColumns): JudgementText {
  const { helper, helperColumn } = reading.call;
  const { judged, count: n, risk } = columns;
  const { usual, freedom, hasRecord } = recordOf(reading);
  const test = outlierText(reading, columns);
  const explained = (count: string): string =>
    `TINV(${risk}/${count},${freedom})*${usual}*SQRT((${count}-1)/${count})`;
  const drops = `MAX(${figure(threeDrops)},${threeSteps}*${test.step})`;
  const allowed = helper(
    "what counts as agreement, mL",
    reading.guarded(when(hasRecord, explained(n), drops)),
  );
  const isWithin = atMost(test.farthest, allowed);
  const byRecord = when(isWithin, zero, when(test.isTied, zero, test.place));
  const byTest = when(and(test.isTested, `${test.graduated}>${test.critical}`), test.place, zero);
  const suspect = helper(
    "place of the suspect reading; 0 where there is none",
    reading.guarded(when(`${n}<2`, zero, when(hasRecord, byRecord, byTest))),
  );
  const others = helperColumn(
    "judged reading, without the suspect, mL",
    cellsOf(judged).map((cell, place) =>
      when(`${cell}=""`, '""', when(`${suspect}=${place + 1}`, '""', cell)),
    ),
  );
  const [most, least, mean] = ["MAX", "MIN", "AVERAGE"].map((name) => `${name}(${others.text})`);
  const farthest = `MAX(${most}-${mean},${mean}-${least})`;
  const agree = helper(
    "do the others agree?",
    reading.guarded(
      when(
        hasRecord,
        when(`${suspect}=0`, isWithin, atMost(farthest, `(${explained(`(${n}-1)`)})`)),
        atMost(`${most}-${least}`, allowed),
      ),
    ),
  );
  return { test, hasRecord, usual, usualFreedom: freedom, suspect, others, allowed, agree };
}

/** The mark of the reading in a place of its range. */
export function markText(
  { read, count }: ReplicateColumns,
  { suspect, agree }: JudgementText,
  place: number,
): string {
  const among = when(agree, text("agrees"), text("apart"));
  const flagged = when(`${suspect}=${place + 1}`, text("suspect"), among);
  const judged = when(`${count}=1`, text("not tested"), flagged);
  return when(`${read.cell(place, 0)}=""`, '""', judged);
}
