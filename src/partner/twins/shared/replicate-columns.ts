/** The replicates as helper columns: as read, as on the mean mass, and how far from the mean. */
import type { TwinArgument } from "../../../functions/twin";
import { type BlanksText, blanksOf, isAbove } from "./blanks";
import { constantOf } from "./constant";
import { cellsOf, checked, filledIn } from "./list";
import { canPair, isOneCell } from "./pairs";
import type { Reading } from "./reading";
import { areEqual } from "./scatter";
import { always, isEmpty, isWithin, never, or, when, wrong } from "./text";

export interface ReplicateColumns {
  /** As typed; empty where not filled in. */
  readonly read: TwinArgument;
  /** Less blank as on the mean sample mass. */
  readonly judged: TwinArgument;
  /** What another reading in the same place would be judged as. */
  readonly asJudged: (reading: string, place: number) => string;
  readonly count: string;
  readonly mean: string;
  readonly deviation: string;
  /** Confidence, %, and the risk that goes with it. */
  readonly confidence: string;
  readonly risk: string;
  /** How many sample masses are filled in; 0 where one mass served all. */
  readonly masses: string;
  readonly blanks: BlanksText;
}

/** The masses where each reading has its own; undefined where one mass served all. */
function massesOf(reading: Reading, readings: TwinArgument): TwinArgument | undefined {
  const masses = reading.call.argument("sampleMasses");
  if (!masses) return undefined;
  if (isOneCell(masses)) {
    const cell = masses.cell(0, 0);
    if (constantOf(cell)) reading.cell("sampleMasses", masses);
    const { limits } = reading.reader("sampleMasses");
    const isAllowed = or(isEmpty(cell), limits ? isWithin(cell, limits) : never);
    reading.allow(isAllowed, constantOf(cell) ? always : `NOT(ISLOGICAL(${cell}))`);
    return undefined;
  }
  if (canPair(readings, masses)) return masses;
  reading.allow(`${filledIn(masses)}=0`);
  return undefined;
}

interface OnMasses {
  readonly judged: TwinArgument;
  readonly asJudged: ReplicateColumns["asJudged"];
  /** How many masses are filled in. */
  readonly filled: string;
  readonly blanks: BlanksText;
}

/** Each reading less blank, times mean mass over its own mass. No masses filled in: the readings themselves. */
function asOnMeanMass(
  reading: Reading,
  readings: TwinArgument,
  read: TwinArgument,
  masses: TwinArgument,
): OnMasses {
  const blanks = blanksRead(reading);
  const blank = blanks.mean;
  const { helper, helperColumn } = reading.call;
  const filled = helper("sample masses filled in", filledIn(masses));
  const cells = cellsOf(masses);
  const places = Math.max(cells.length, cellsOf(readings).length);
  const own = helperColumn(
    "sample mass, g",
    Array.from({ length: places }, (_, place) => {
      const cell = cells[place] ?? '""';
      const isRead = place < read.rows ? `${read.cell(place, 0)}<>""` : never;
      const mass = checked(reading, "sampleMasses", cell);
      const matched = when(
        isRead,
        when(isEmpty(cell), wrong, mass),
        when(isEmpty(cell), '""', wrong),
      );
      return when(`${filled}=0`, '""', matched);
    }),
  );
  const mean = helper("mean sample mass, g", `IF(${filled}=0,1,AVERAGE(${own.text}))`);
  const onMean = (value: string, place: number): string =>
    `(${value}-${blank})*${mean}/${own.cell(place, 0)}`;
  const judged = helperColumn(
    "reading less blank, as on the mean sample mass, mL",
    Array.from({ length: read.rows }, (_, place) => {
      const value = read.cell(place, 0);
      const scaled = when(isAbove(value, blank), onMean(value, place), wrong);
      return when(`${value}=""`, '""', when(`${filled}=0`, value, scaled));
    }),
  );
  const asJudged = (value: string, place: number): string =>
    when(`${filled}=0`, value, onMean(value, place));
  return { judged, asJudged, filled, blanks };
}

/** Read even where it plays no part: a blank that is wrong or not there yet is said. */
function blanksRead(reading: Reading): BlanksText {
  const blanks = blanksOf(reading);
  const { count } = blanks;
  if (!constantOf(count)) {
    reading.needs(`ISNA(${count})`);
    reading.allow(`ISNUMBER(${count})`);
  }
  return blanks;
}

/** One mass for all changes nothing. */
function asRead(reading: Reading, read: TwinArgument): OnMasses {
  const blanks = blanksRead(reading);
  return { judged: read, asJudged: (value) => value, filled: "0", blanks };
}

export function replicateColumns(reading: Reading): ReplicateColumns | undefined {
  const readings = reading.call.argument("readings");
  if (!readings) {
    reading.meaning("readings", undefined);
    return undefined;
  }
  const { helper, helperColumn } = reading.call;
  const read = helperColumn(
    "reading, mL",
    cellsOf(readings).map((cell) => checked(reading, "readings", cell)),
  );
  reading.needs(`COUNT(${read.text})=0`);
  const masses = massesOf(reading, readings);
  const {
    judged,
    asJudged,
    filled: filledMasses,
    blanks,
  } = masses ? asOnMeanMass(reading, readings, read, masses) : asRead(reading, read);
  reading.allow(`ISNUMBER(SUM(${judged.text}))`);
  const confidence = reading.figure("confidencePercent");
  const count = helper("readings: how many", `COUNT(${judged.text})`);
  return {
    read,
    judged,
    asJudged,
    count,
    mean: helper("mean, mL", `AVERAGE(${judged.text})`),
    deviation: helper(
      "standard deviation, mL",
      `IF(${count}<2,0,IF(${areEqual(judged.text)},0,SQRT(DEVSQ(${judged.text})/(${count}-1))))`,
    ),
    confidence,
    risk: `(100-${confidence})/100`,
    masses: filledMasses,
    blanks,
  };
}
