/** Where replicates stand on the burette: its divisions, the band that chance explains, a dot a titre. */
import { scaleLinear } from "d3-scale";
import type { Band } from "../../../core/replicates/band";
import type { Mark } from "../../../core/replicates/judgement";
import { stacked, type Stacked } from "./dot-plot";

export interface Titrated {
  readonly name: string;
  /** mL, as it is judged. */
  readonly value: number;
  readonly mark: Mark | "omitted";
}

interface Tick {
  readonly x: number;
  /** mL; the ticks between the labels have none. */
  readonly label: string | undefined;
}

interface DivisionPlot {
  readonly dots: readonly Stacked<Titrated>[];
  readonly band: readonly [from: number, to: number];
  readonly ticks: readonly Tick[];
  /** How many divisions lie between two ticks. */
  readonly divisions: number;
}

const mostTicks = 16;
const mostLabels = 5;
const grouping = [1, 2, 5];

/** 1, 2, 5, 10, 20 and so on: the first with which so many fit. */
function groupFor(count: number, most: number): number {
  for (let ten = 1; ; ten *= 10) {
    const found = grouping.find((each) => count / (each * ten) <= most);
    if (found !== undefined) return found * ten;
  }
}

/** A place this near to a division is on it. */
const rounding = 1e-6;
/** A scale that shows no step is drawn in hundredths of a millilitre. */
const unknownStep = 0.01;
const placesOf = (step: number): number => Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));

/**
 * @param step of the burette, mL; 0 where it is not known
 * @param width of the drawing, in its own units
 * @param edge room kept free on both sides
 */
export function divisionPlot(
  titrated: readonly Titrated[],
  band: Band,
  step: number,
  width: number,
  edge: number,
): DivisionPlot {
  const division = step > 0 ? step : unknownStep;
  const all = [band.from, band.to, ...titrated.map(({ value }) => value)];
  const first = Math.max(0, Math.floor(Math.min(...all) / division + rounding) - 1);
  const last = Math.ceil(Math.max(...all) / division - rounding) + 1;
  const divisions = groupFor(last - first, mostTicks);
  const labelled = groupFor(last - first, mostLabels);
  const scale = scaleLinear()
    .domain([first * division, last * division])
    .range([edge, width - edge]);
  const ticks: Tick[] = [];
  for (let at = Math.ceil(first / divisions) * divisions; at <= last; at += divisions) {
    const isLabelled = at % labelled === 0;
    const label = isLabelled ? (at * division).toFixed(placesOf(division)) : undefined;
    ticks.push({ x: scale(at * division), label });
  }
  return {
    dots: stacked(titrated.map((each) => ({ ...each, x: scale(each.value) }))),
    band: [scale(Math.max(band.from, first * division)), scale(band.to)],
    ticks,
    divisions,
  };
}
