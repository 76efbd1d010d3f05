/** Single values in the order of time on a control chart: blanks, the acid value of a kept oil. */
import { counted } from "../../sheet/counted";
import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import {
  action,
  type ControlChart,
  controlChart,
  fewestValues,
  limitAt,
} from "../../core/record/control-chart";
import { controlFlags, type Flag, flags, isBeyond } from "../../core/record/control-flags";
import { usual } from "../../core/reference/defaults";
import { dayInWords } from "./day-words";
import { are, type Found, type Point } from "./series";

export interface Value {
  readonly day: number;
  readonly value: number;
  readonly of: string;
}

export interface Asked {
  readonly title: string;
  readonly unit: string;
  readonly what: string;
  /** "blank", "blanks". */
  readonly one: string;
  readonly many: string;
  /** What to do where there are too few, after "3 more blanks". */
  readonly leftOut: readonly string[];
  readonly places: number;
}

const source =
  "Limits: 3 sigma by moving ranges, never below what reading to a step explains (NIST/SEMATECH e-Handbook 6.3.2.2); runs by Nelson, 1984.";

/** What the last values, all flagged alike, say. */
function atTheEnd(flag: Flag, count: number, isAbove: boolean, { one, many }: Asked): string {
  const last = count === 1 ? `The last ${one} is` : `The last ${String(count)} ${many} are`;
  switch (flag) {
    case flags.beyond:
      return `${last} ${isAbove ? "above the upper" : "below the lower"} limit: something changed.`;
    case flags.side:
      return `The last nine ${many} or more all lie ${isAbove ? "above" : "below"} the centre: something changed.`;
    case flags.rising:
      return `The last six ${many} or more each lie above the one before: something drifts.`;
    default:
      return `The last six ${many} or more each lie below the one before: something drifts.`;
  }
}

/** No single value may be out while their weighted mean is. */
const isShifting = ({ weighted, centre, weightedWidth }: ControlChart): boolean =>
  isBeyond(weighted.minus(centre), weightedWidth);

function sentenceOf(
  chart: ControlChart,
  found: readonly Flag[],
  asked: Asked,
  days: readonly Value[],
) {
  const { one, many, places, unit } = asked;
  const isAbove = (place: number): boolean => chart.values[place]?.gt(chart.centre) === true;
  const end = found.length - 1;
  const latest = found[end];
  if (latest !== undefined && latest !== flags.none) {
    let from = end;
    while (found[from - 1] === latest && isAbove(from - 1) === isAbove(end)) from -= 1;
    return atTheEnd(latest, end - from + 1, isAbove(end), asked);
  }
  const flagged = found.filter((flag) => flag !== flags.none).length;
  const place = found.reduce((before, flag, at) => (flag === flags.none ? before : at), -1);
  const last = days[place];
  if (last) {
    return `${String(flagged)} of ${counted(found.length, one, many)} ${are(flagged)} flagged, the last on ${dayInWords(last.day)}: ${last.value.toFixed(places)} ${unit}, ${found[place] ?? ""}.`;
  }
  return isShifting(chart)
    ? `No single ${one} is out, but their weighted mean is: something shifts slowly.`
    : `All ${String(found.length)} ${many} are in control.`;
}

/**
 * @param values in the order of time
 * @param step the smallest difference they are read to; undefined: inferred from them
 */
export function controlSeries(
  values: readonly Value[],
  step: number | undefined,
  asked: Asked,
): Found {
  const { title, unit, what, one, many, leftOut, places } = asked;
  const shown = { title, unit, what, leftOut };
  const chart = controlChart(
    values.map(({ value }) => exact(value)),
    undefined,
    step === undefined ? undefined : exact(step),
    usual.controlWeight,
  );
  if (isProblem(chart)) {
    const more = fewestValues - values.length;
    const sentence = `${counted(more, `more ${one}`, `more ${many}`)} ${more === 1 ? "makes" : "make"} a chart.`;
    return { kind: "too few", ...shown, sentence };
  }
  const found = controlFlags(chart);
  const level = (sigmas: number) => values.map(() => limitAt(chart, sigmas).toNumber());
  const sentence = sentenceOf(chart, found, asked, values);
  const points = values.map((each, place): Point => {
    const said = found[place] ?? flags.none;
    return { ...each, said, isOut: said !== flags.none };
  });
  return {
    kind: "series",
    ...shown,
    across: "days",
    called: "Lot",
    summary: "control",
    source,
    places,
    points,
    isOdd: points.some(({ isOut }) => isOut) || isShifting(chart),
    lines: [
      { name: "Upper limit", values: level(action) },
      { name: "Centre", values: level(0) },
      { name: "Lower limit", values: level(-action) },
    ],
    sentence,
  };
}
