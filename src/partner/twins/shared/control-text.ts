/** A control chart in helper cells: values one after another, centre, sigma, flags. */
import { slack } from "../../../core/exact/compare";
import { action, fewestValues, rangePerSigma } from "../../../core/record/control-chart";
import { flags, inOneDirection, onOneSide } from "../../../core/record/control-flags";
import type { TwinArgument } from "../../../functions/twin";
import { cellsOf, checked } from "./list";
import { usualStep } from "./outlier-text";
import type { Reading } from "./reading";
import { figure, missing, text, when } from "./text";

export interface ControlText {
  /** One for each cell of the range. */
  readonly read: TwinArgument;
  /** The values filled in, one after another; empty after the last. */
  readonly values: TwinArgument;
  readonly count: string;
  readonly centre: string;
  readonly movingRange: string;
  readonly sigma: string;
  /** One flag for each value. */
  readonly marks: TwinArgument;
}

/** Part of the centre that two doubles of the same decimals may differ by. */
const rounding = "1E-14";

/** Beyond a limit, with the slack that the core allows. */
export const isBeyond = (distance: string, limit: string): string =>
  `ABS(${distance})>${limit}*${figure(1 + slack.toNumber())}`;

/** How many in a row, the value itself counted: each cell of the column builds on the one before. */
function runs(
  reading: Reading,
  label: string,
  signs: TwinArgument,
  of: { level: number; fresh: number },
): string[] {
  let [run, before] = ["0", "0"];
  return cellsOf(signs).map((sign, place) => {
    const formula = `IF(${sign}="",0,IF(${sign}=0,${of.level},IF(${sign}=${before},${run}+1,${of.fresh})))`;
    run = reading.call.helper(`${label}, value ${place + 1}`, formula);
    before = sign;
    return run;
  });
}

export function controlText(reading: Reading): ControlText | undefined {
  const given = reading.call.argument("values");
  if (!given || given.rows * given.columns < fewestValues) {
    reading.refuse(missing);
    return undefined;
  }
  reading.constants("values", given);
  const { helper, helperColumn } = reading.call;
  const read = helperColumn(
    "value",
    cellsOf(given).map((cell) => checked(reading, "values", cell)),
  );
  reading.allow(`ISNUMBER(SUM(${read.text}))`);
  const count = helper("values: how many", `COUNT(${read.text})`);
  reading.needs(`${count}<${fewestValues}`);
  const baseline = reading.call.argument("baseline") ? reading.figure("baseline", count) : count;
  reading.needs(`${baseline}>${count}`);
  reading.allow(`INT(${baseline})=${baseline}`);
  const inferred = usualStep(reading, read);
  const step = reading.call.argument("step") ? reading.figure("step", inferred) : inferred;

  const filled = helperColumn(
    "place of a value",
    cellsOf(read).map((cell, place) => when(`${cell}=""`, '""', String(place + 1))),
  );
  const places = cellsOf(read).map((_, place) => place);
  const values = helperColumn(
    "value, one after another",
    places.map(
      (k) => `IF(${k + 1}>${count},"",INDEX(${read.text},SMALL(${filled.text},${k + 1})))`,
    ),
  );
  const early = helperColumn(
    "value of the baseline",
    places.map((k) => `IF(${k + 1}>${baseline},"",${values.cell(k, 0)})`),
  );
  const centre = helper("centre", `AVERAGE(${early.text})`);
  const ranges = helperColumn(
    "moving range",
    places.map((k) =>
      k === 0
        ? '""'
        : `IF(${early.cell(k, 0)}="","",ABS(${early.cell(k, 0)}-${early.cell(k - 1, 0)}))`,
    ),
  );
  const movingRange = helper("mean moving range", `AVERAGE(${ranges.text})`);
  const sigma = helper("sigma", `MAX(${movingRange}/${figure(rangePerSigma)},${step}/SQRT(6))`);

  const off = (k: number): string => `(${values.cell(k, 0)}-${centre})`;
  const ifThere = (k: number, formula: string) => when(`${values.cell(k, 0)}=""`, '""', formula);
  const sides = helperColumn(
    "side of the centre",
    places.map((k) =>
      ifThere(k, `IF(ABS(${off(k)})<=${rounding}*${centre},0,IF(${off(k)}>0,1,-1))`),
    ),
  );
  const trends = helperColumn(
    "up or down from the value before",
    places.map((k) => {
      const [now, before] = [values.cell(k, 0), values.cell(Math.max(0, k - 1), 0)];
      return ifThere(k, `IF(${now}>${before},1,IF(${now}<${before},-1,0))`);
    }),
  );
  const onSide = runs(reading, "in a row on one side", sides, { level: 0, fresh: 1 });
  const inTrend = runs(reading, "in a row in one direction", trends, { level: 1, fresh: 2 });
  const marks = helperColumn(
    "flag",
    places.map((k) => {
      const direction = when(`${trends.cell(k, 0)}>0`, text(flags.rising), text(flags.falling));
      const run = when(`${inTrend[k] ?? "0"}<${inOneDirection}`, text(flags.none), direction);
      const side = when(`${onSide[k] ?? "0"}>=${onOneSide}`, text(flags.side), run);
      return ifThere(k, when(isBeyond(off(k), `${action}*${sigma}`), text(flags.beyond), side));
    }),
  );
  return { read, values, count, centre, movingRange, sigma, marks };
}
