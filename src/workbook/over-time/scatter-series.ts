/** How far the titres of each titration scatter, held against how far this hand usually does. */
import { counted } from "../../sheet/counted";
import { range } from "../../core/exact/lists";
import { isProblem } from "../../core/problem/problem";
import { withoutAccidents } from "../../core/record/accident";
import { scatterLimit } from "../../core/record/scatter-limit";
import { pooledDeviation, squaresOfTitres, usualScatter } from "../../core/record/usual-scatter";
import { fromTwoReadings } from "../../core/uncertainty/standard-uncertainty";
import { fewestValues } from "../../core/record/control-chart";
import { dayInWords } from "./day-words";
import { type DatedTitration, comparable } from "./method";
import type { RecordedTitration } from "../planning/read-titrations";
import { are, type Found, type Point } from "./series";

const title = "Scatter of each titration";
const shown = { title, unit: "mL", what: "Standard deviation of its titres" } as const;
const source = "Limit: Shewhart s chart, factor B6 (ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.2.1).";
const places = 3;

interface Scattered {
  readonly row: DatedTitration;
  readonly count: number;
  /** mL. */
  readonly deviation: number;
}

/** Its titres alone, brought to one mass where each has its own. */
function scattered(row: DatedTitration): Scattered[] {
  const squares = squaresOfTitres(row);
  if (isProblem(squares) || squares.freedom < 1) return [];
  return [{ row, count: squares.freedom + 1, deviation: pooledDeviation(squares) }];
}

/** As Titrate has it: from the titrations whose readings do not lie so far apart that something happened. */
function usualOf(rows: readonly DatedTitration[]): number {
  const step = rows[0]?.titreStep;
  if (step === undefined) return Number.NaN;
  const sigma = usualScatter(withoutAccidents(rows, step), step);
  // all of them lie too far apart: nobody scatters less than the scale lets one read
  return isProblem(sigma) ? fromTwoReadings(step.toNumber()) : sigma;
}

/** How far its titres lie apart; on masses of their own, how far they scatter when brought to one. */
function apart({ row, deviation }: Scattered): string {
  if (row.samples !== undefined) return `titres scatter by ${deviation.toFixed(2)} mL`;
  const read = [row.titreStep, ...row.titres].map((each) => each?.decimalPlaces() ?? 0);
  return `titres ${range(row.titres).toFixed(Math.max(...read))} mL apart`;
}

/** Those that scatter more than usual, in the order of time. */
function sentenceOf(out: readonly Scattered[], count: number, sigma: number): string {
  const last = out.at(-1);
  if (!last) {
    return `All ${String(count)} titrations scatter as usual (standard deviation ${sigma.toFixed(places)} mL).`;
  }
  const { lot, day } = last.row;
  const name = `${lot === "" ? "The titration" : lot} on ${dayInWords(day)}`;
  const again = "more than your usual. Titrate it again.";
  return out.length === 1
    ? `${name}: ${apart(last)}, ${again}`
    : `${String(out.length)} of ${String(count)} titrations scatter more than your usual, the last ${name}: ${apart(last)}. Titrate it again.`;
}

export function scatterSeries(all: readonly RecordedTitration[]): Found {
  const { rows, leftOut } = comparable(all);
  const measured = rows.flatMap(scattered);
  if (measured.length < fewestValues) {
    const more = fewestValues - measured.length;
    return {
      kind: "too few",
      ...shown,
      leftOut,
      sentence: `${counted(more, "more titration")} with two titres or more ${more === 1 ? "makes" : "make"} a chart of the scatter.`,
    };
  }
  const sigma = usualOf(rows);
  const limits = measured.map(({ count }) => scatterLimit(count, sigma));
  const points = measured.map(({ row, deviation }, place): Point => {
    const isOut = deviation > (limits[place] ?? Infinity);
    return {
      day: row.day,
      value: deviation,
      of: row.lot,
      said: isOut ? "above its limit" : "as usual",
      isOut,
    };
  });
  const single = rows.length - measured.length;
  return {
    kind: "series",
    ...shown,
    across: "days",
    called: "Lot",
    summary: "none",
    source,
    places,
    isOdd: points.some(({ isOut }) => isOut),
    points,
    lines: [
      { name: "Usual", values: points.map(() => sigma) },
      { name: "Limit", values: limits },
    ],
    leftOut: [
      ...leftOut,
      ...(single > 0
        ? [`${counted(single, "titration")} with one titre ${are(single)} left out.`]
        : []),
    ],
    sentence: sentenceOf(
      measured.filter((_, place) => points[place]?.isOut),
      points.length,
      sigma,
    ),
  };
}
