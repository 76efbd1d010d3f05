/** Does today, titres and blanks, scatter more than the record explains? In helper cells, by the F test of the ±. */
import { poolingRisk } from "../../../core/record/pooled-scatter";
import type { JudgementText } from "./judgement-text";
import type { Reading } from "./reading";
import type { ReplicateColumns } from "./replicate-columns";
import { squaresAbout } from "./scatter";
import { never, when } from "./text";

/** @returns text of a truth */
export function moreText(
  reading: Reading,
  { judged, count, blanks }: ReplicateColumns,
  { hasRecord, usual, usualFreedom }: JudgementText,
): string {
  if (hasRecord === never) return never;
  const { helper } = reading.call;
  const own = helper(
    "today's degrees of freedom, of titres and blanks",
    reading.guarded(`${count}-1+MAX(0,${blanks.count}-1)`),
  );
  const squares = helper(
    "today's sum of squares, of titres and blanks",
    reading.guarded(`${squaresAbout(judged.text)}+${blanks.squares()}`),
  );
  const chance = `FDIST(${squares}/${own}/${usual}^2,${own},${usualFreedom})`;
  return helper(
    "does today scatter more than usual?",
    reading.guarded(when(hasRecord, when(`${own}<1`, never, `${chance}<${poolingRisk}`), never)),
  );
}
