/** A reading apart from the rest, in helper cells: a slip of the decimal point, or one far off. */
import { fewestForSlip, slips } from "../../../core/replicates/decimal-slip";
import { timesApart } from "../../../core/replicates/lone-reading";
import { countWords, slipWord } from "../../../core/replicates/verdict-words";
import type { TwinArgument } from "../../../functions/twin";
import type { JudgementText } from "./judgement-text";
import { cellsOf } from "./list";
import type { Reading } from "./reading";
import type { ReplicateColumns } from "./replicate-columns";
import { and, atMost, or, text, when } from "./text";

/** A column of the largest, and one of the smallest, of the readings but that of the row. */
function extremes(reading: Reading, { judged, count }: ReplicateColumns) {
  const column = (label: string, top: string, second: string): TwinArgument =>
    reading.call.helperColumn(
      label,
      cellsOf(judged).map((cell) => {
        const isTop = `${cell}=${top}(${judged.text})`;
        const found = when(isTop, `${second}(${judged.text},2)`, `${top}(${judged.text})`);
        return when(or(`${count}<${fewestForSlip}`, `${cell}=""`), '""', found);
      }),
    );
  return {
    most: column("largest of the other readings, mL", "MAX", "LARGE"),
    least: column("smallest of the other readings, mL", "MIN", "SMALL"),
  };
}

/** First place of a column that is filled in; 0 where none is. */
function firstFilled(reading: Reading, label: string, column: TwinArgument): string {
  const places = reading.call.helperColumn(
    `${label}: its place`,
    cellsOf(column).map((cell, place) => when(`${cell}=""`, '""', String(place + 1))),
  );
  return reading.call.helper(label, `IF(COUNT(${places.text})=0,0,MIN(${places.text}))`);
}

export interface LoneText {
  /** Place of a slip of the decimal point; 0 where there is none. */
  readonly slip: string;
  /** "ten times the others". */
  readonly slipWord: string;
  readonly perhaps: string;
  /** Place of the reading far from others that agree; 0 where there is none. */
  readonly lone: string;
  /** How far, mL. */
  readonly distance: string;
}

export function loneText(
  reading: Reading,
  columns: ReplicateColumns,
  { suspect, agree, allowed, hasRecord }: JudgementText,
): LoneText {
  const { helper, helperColumn } = reading.call;
  const { read, judged, asJudged } = columns;
  const { most, least } = extremes(reading, columns);
  const cells = cellsOf(read);

  const slipKinds = helperColumn(
    "slip of the decimal point: which",
    cells.map((cell, place) => {
      const [top, low] = [most.cell(place, 0), least.cell(place, 0)];
      const isNear = (value: string): string =>
        atMost(`MAX(${top},${value})-MIN(${low},${value})`, allowed);
      const other = slips.reduceRight(
        (rest, times, kind) =>
          when(isNear(asJudged(`${cell}/${times}`, place)), String(kind + 1), rest),
        '""',
      );
      const found = when(isNear(judged.cell(place, 0)), '""', other);
      return when(or(`${top}=""`, and(`${suspect}=0`, agree)), '""', found);
    }),
  );
  const slip = firstFilled(reading, "slip of the decimal point", slipKinds);
  const kind = `INDEX(${slipKinds.text},${slip})`;
  const times = `CHOOSE(${kind},${slips.join(",")})`;

  const distances = helperColumn(
    "distance from the nearest of the others, mL",
    cells.map((_, place) => {
      const [value, top] = [judged.cell(place, 0), most.cell(place, 0)];
      return when(`${top}=""`, '""', `MAX(${value}-${top},${least.cell(place, 0)}-${value})`);
    }),
  );
  const far = helperColumn(
    "far from others that agree",
    cellsOf(distances).map((distance, place) => {
      const [top, low] = [most.cell(place, 0), least.cell(place, 0)];
      const isNear = atMost(distance, `(${timesApart}*${allowed})`);
      const isFar = and(`NOT(${isNear})`, atMost(`${top}-${low}`, allowed));
      return when(`${distance}=""`, '""', when(isFar, "1", '""'));
    }),
  );
  const farOne = firstFilled(reading, "reading far from others that agree", far);
  const byItself = when(hasRecord, "0", when(agree, "0", farOne));
  const lone = helper(
    "place of the reading that stands alone; 0 where there is none",
    reading.guarded(when(`${suspect}=0`, byItself, when(agree, suspect, "0"))),
  );
  return {
    slip,
    slipWord: `CHOOSE(${kind},${slips.map((each) => text(slipWord(each))).join(",")})`,
    perhaps: helper(
      "what may have been read, mL",
      when(`${slip}=0`, '""', `INDEX(${read.text},${slip})/${times}`),
    ),
    lone,
    distance: `INDEX(${distances.text},${lone})`,
  };
}

/** A count in words. */
export const counted = (count: string): string =>
  `CHOOSE(MIN(${count},${countWords.length + 1}),${countWords.map(text).join(",")},(${count})&"")`;
