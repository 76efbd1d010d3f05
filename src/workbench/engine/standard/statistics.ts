/** One figure from lists of figures. In a range what is no figure is left out. */
import { ofLists, type Standard } from "./adapter";
import { doubt } from "./doubt";
import { quotient } from "./operators";
import { number } from "./convert";
import { Fault, type Given } from "./value";

/** The figures of arguments; the first error is the answer. */
export function figuresOf(given: readonly Given[]): number[] {
  return given.flatMap(({ rows, isRange, isOne }) =>
    rows.flat().flatMap((cell) => {
      if (cell instanceof Fault) throw cell;
      if (typeof cell === "number") return [cell];
      // TRUE in a cell is 1 to some and nothing to others
      if (typeof cell === "boolean") doubt();
      // one that is given by itself counts, and must be a figure
      return isRange || !isOne ? [] : [number(cell)];
    }),
  );
}

/** Summed with what is lost on the way kept beside it (Neumaier). */
export function total(figures: readonly number[]): number {
  let sum = 0;
  let lost = 0;
  for (const figure of figures) {
    const next = sum + figure;
    lost += Math.abs(sum) >= Math.abs(figure) ? sum - next + figure : figure - next + sum;
    sum = next;
  }
  return sum + lost;
}

const mean = (figures: readonly number[]): number => quotient(total(figures), figures.length);

function squares(figures: readonly number[]): number {
  const middle = mean(figures);
  return total(figures.map((figure) => (figure - middle) ** 2));
}

const variance = (figures: readonly number[], less: number): number =>
  quotient(squares(figures), Math.max(0, figures.length - less));

function median(figures: readonly number[]): number {
  if (figures.length === 0) {
    doubt();
    throw new Fault("#NUM!");
  }
  const sorted = [...figures].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2;
}

const ofFigures = (work: (figures: readonly number[]) => number): Standard =>
  ofLists((given) => work(figuresOf(given)));

const cellsOf = (given: readonly Given[]) =>
  given.flatMap(({ rows, isRange, isOne }) =>
    rows.flat().map((cell) => ({ cell, isAlone: !isRange && isOne })),
  );

const extreme = (work: (...figures: number[]) => number) => (figures: readonly number[]) =>
  figures.length === 0 ? 0 : figures.reduce((a, b) => work(a, b));

/** The smallest, the next, and so on. */
const ranked = (order: 1 | -1): Standard => ({
  least: 2,
  most: 2,
  kinds: "lv",
  work: ([list, place]) => {
    if (typeof place?.rows[0]?.[0] !== "number") doubt();
    const figures = figuresOf(list ? [{ ...list, isRange: true }] : []).sort(
      (a, b) => order * (a - b),
    );
    const at = Math.trunc(number(place?.rows[0]?.[0] ?? null));
    const found = figures[at - 1];
    if (found === undefined) {
      doubt();
      throw new Fault("#NUM!");
    }
    return found;
  },
});

export const statistics: Readonly<Record<string, Standard>> = {
  SUM: ofFigures(total),
  PRODUCT: ofFigures((figures) => (figures.length === 0 ? 0 : figures.reduce((a, b) => a * b))),
  AVERAGE: ofFigures(mean),
  MEDIAN: ofFigures(median),
  MIN: ofFigures(extreme(Math.min)),
  MAX: ofFigures(extreme(Math.max)),
  SUMSQ: ofFigures((figures) => total(figures.map((figure) => figure * figure))),
  DEVSQ: ofFigures(squares),
  "STDEV.S": ofFigures((figures) => Math.sqrt(variance(figures, 1))),
  STDEV: ofFigures((figures) => Math.sqrt(variance(figures, 1))),
  "STDEV.P": ofFigures((figures) => Math.sqrt(variance(figures, 0))),
  STDEVP: ofFigures((figures) => Math.sqrt(variance(figures, 0))),
  "VAR.S": ofFigures((figures) => variance(figures, 1)),
  VAR: ofFigures((figures) => variance(figures, 1)),
  "VAR.P": ofFigures((figures) => variance(figures, 0)),
  VARP: ofFigures((figures) => variance(figures, 0)),
  COUNT: ofLists(
    (given) =>
      cellsOf(given).filter(({ cell, isAlone }) => {
        if (typeof cell === "boolean" || (isAlone && typeof cell === "string")) doubt();
        return (
          typeof cell === "number" || (isAlone && (cell === null || typeof cell === "boolean"))
        );
      }).length,
  ),
  COUNTA: ofLists(
    (given) => cellsOf(given).filter(({ cell, isAlone }) => isAlone || cell !== null).length,
  ),
  COUNTBLANK: {
    least: 1,
    most: 1,
    kinds: "l",
    work: (given) => cellsOf(given).filter(({ cell }) => cell === null || cell === "").length,
  },
  SMALL: ranked(1),
  LARGE: ranked(-1),
};
