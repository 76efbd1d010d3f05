/** Scales of a chart's axes: from figures to places, with their marks at round figures. */
import { scaleLinear, scaleLog, scaleUtc } from "d3-scale";
import {
  millisecondsInDay,
  serialOf1970,
  serialsEnd,
  timeOfSerial,
} from "../../../sheet/serial-days";
import type { ChartAxis } from "../../../xlsx/file-chart";
import { shownValue } from "../../engine/formatted";

export interface Tick {
  readonly at: number;
  readonly label: string;
}

export interface Scale {
  readonly at: (value: number) => number;
  readonly ticks: readonly Tick[];
  /** Where bars stand: zero, or the end next to it. */
  readonly base: number;
}

export interface Wanted {
  readonly axis: ChartAxis | undefined;
  readonly values: readonly number[];
  /** Bars are as long as their figures. */
  readonly fromZero: boolean;
  /** Of what the axis says nothing. */
  readonly format: string | undefined;
  readonly isDates: boolean;
  /** Places of the two ends. */
  readonly range: readonly [number, number];
  /** Marks there is room for. */
  readonly marks: number;
}

const mostMarks = 60;

export function extentOf(values: readonly number[]): readonly [number, number] | undefined {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? [low, high] : undefined;
}

/** Where doubles end, nothing can be divided into steps any more. */
const largest = 1e300;
const smallest = 1e-290;
const sane = (value: number): number =>
  Math.abs(value) < smallest ? 0 : Math.min(largest, Math.max(-largest, value));

/** Ends so close that no step between them can be told. */
const areOne = (from: number, to: number): boolean =>
  !(to - from > 1e-9 * Math.max(Math.abs(from), Math.abs(to)));

/** Figures that differ little are shown from near the lowest; others from zero (common practice). */
const littleApart = 1 / 6;

function ends({ axis, values, fromZero, isDates }: Wanted): readonly [number, number] {
  const usable = axis?.base === undefined ? values : values.filter((value) => value > 0);
  const [low, high] = extentOf(usable) ?? (axis?.base === undefined ? [0, 1] : [1, 10]);
  let [from, to] = [low, high];
  if (!isDates && axis?.base === undefined) {
    if (fromZero || (low > 0 && high - low > high * littleApart)) from = Math.min(0, low);
    if (fromZero || (high < 0 && high - low > -low * littleApart)) to = Math.max(0, high);
  }
  from = sane(axis?.least ?? from);
  to = sane(axis?.most ?? to);
  if (axis?.base !== undefined) {
    const [first, last] = [from > 0 ? from : 1, to > 0 ? to : 1];
    return areOne(first, last) ? [first / axis.base, first * axis.base] : [first, last];
  }
  if (!areOne(from, to)) return [from, to];
  const room = isDates ? 1 : Math.abs(from) * 0.1 || 1;
  return axis?.most === undefined ? [from, from + room] : [to - room, to];
}

function stepped(step: number, [from, to]: readonly [number, number]): number[] | undefined {
  if ((to - from) / step > mostMarks) return undefined;
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first;
  const all = Array.from({ length: count + 1 }, (_, index) => {
    // 3 x 0.1 as a person writes it
    return Number(((first + index) * step).toPrecision(12));
  });
  // of a step that is far larger than the axis, its own slack is too
  const slack = (to - from) * 1e-6;
  const marks = all.filter((at) => at >= from - slack && at <= to + slack);
  return marks.length === 0 ? undefined : marks;
}

/** Rounded outwards, where the axis does not say where it ends. */
function rounded(domain: readonly [number, number], { axis, marks }: Wanted): [number, number] {
  const [low = 0, high = 1] = scaleLinear().domain(domain).nice(marks).domain();
  const step = axis?.step;
  const [from, to] = step
    ? [Math.floor(domain[0] / step) * step, Math.ceil(domain[1] / step) * step]
    : [low, high];
  const ends = [
    axis?.least === undefined ? from : domain[0],
    axis?.most === undefined ? to : domain[1],
  ];
  return [sane(ends[0] ?? from), sane(ends[1] ?? to)];
}

const toDate = (value: number): Date => new Date(timeOfSerial(value));

function dateTicks(domain: readonly [number, number], marks: number): number[] {
  const dates = scaleUtc().domain(domain.map(toDate)).ticks(marks);
  const days = dates.map((date) => Math.round(date.getTime() / millisecondsInDay + serialOf1970));
  return [...new Set(days)].filter((each) => each >= domain[0] && each <= domain[1]);
}

/** As a cell shows it; what the format has no place for stays a plain figure. */
export function labelOf(value: number, format: string | undefined): string {
  try {
    return shownValue(value, format);
  } catch {
    return String(value);
  }
}

/** Under each mark its own figure: a format of cells may have too few places for those between. */
function labelled(ticks: readonly number[], format: string | undefined): string[] {
  const labels = ticks.map((tick) => labelOf(tick, format));
  const isTold = new Set(labels).size === labels.length;
  return isTold ? labels : ticks.map((tick) => labelOf(tick, undefined));
}

export function scaleFor(wanted: Wanted): Scale {
  const { axis, range, marks } = wanted;
  const given = ends(wanted);
  const isDates = wanted.isDates && given[0] >= 0 && given[1] < serialsEnd;
  const format = axis?.format ?? wanted.format ?? (isDates ? "yyyy-mm-dd" : undefined);
  const [start, end] = axis?.isReversed ? [range[1], range[0]] : range;
  if (axis?.base !== undefined) {
    const scale = scaleLog().base(axis.base).domain(given).range([start, end]);
    if (axis.least === undefined && axis.most === undefined) scale.nice();
    const [low = 1] = scale.domain();
    const powers = scale.ticks(marks).filter((tick) => {
      const power = Math.log(tick) / Math.log(axis.base ?? 10);
      return Math.abs(power - Math.round(power)) < 1e-9;
    });
    const ticks = powers.map((tick) => ({ at: scale(tick), label: labelOf(tick, format) }));
    return { at: (value) => (value > 0 ? scale(value) : NaN), ticks, base: scale(low) };
  }
  const domain = isDates ? given : rounded(given, wanted);
  const scale = scaleLinear().domain(domain).range([start, end]);
  const ticks =
    (axis?.step === undefined ? undefined : stepped(axis.step, domain)) ??
    (isDates ? dateTicks(domain, marks) : scale.ticks(marks));
  const labels = labelled(ticks, format);
  return {
    at: scale,
    ticks: ticks.map((tick, index) => ({ at: scale(tick), label: labels[index] ?? "" })),
    base: scale(Math.min(Math.max(0, domain[0]), domain[1])),
  };
}
