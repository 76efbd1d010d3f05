/** The figures as a table, with the machine, the versions and the day they were measured on. */
import { cpus, loadavg, release, totalmem, type } from "node:os";
import { version as library } from "mathjs";
import { type Figure, measured } from "./figure";

const machine = (): string => {
  const [first] = cpus();
  const memory = Math.round(totalmem() / 2 ** 30);
  return `${String(cpus().length)} x ${first?.model.trim() ?? "unknown processor"}, ${String(memory)} GiB, ${type()} ${release()}`;
};

/** What else the machine had to do, so that a reader can tell a quiet run from another. */
const busy = (): string => `load ${loadavg()[1]?.toFixed(1) ?? "unknown"}`;

const measuredOn = (): string =>
  `Measured ${new Date().toISOString().slice(0, 10)} on ${machine()}, ${busy()}; Node ${process.version}, mathjs ${library}.`;

const budget = ({ most, unit }: Figure): string =>
  most === undefined ? "" : `at most ${most.toLocaleString("en-GB")} ${unit}`;

export const isWithin = ({ value, most }: Figure): boolean => most === undefined || value <= most;

const verdict = (figure: Figure): string =>
  figure.most === undefined ? "" : isWithin(figure) ? "yes" : "NO";

const table = (rows: readonly (readonly string[])[]): string[] => {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(3, ...rows.map((cells) => cells[column]?.length ?? 0)),
  );
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(" | ")} |`;
  const [head = [], ...rest] = rows;
  return [line(head), line(widths.map((width) => "-".repeat(width))), ...rest.map(line)];
};

export const report = (figures: readonly Figure[]): string =>
  [
    measuredOn(),
    "Processor time, the smallest of several runs by turns; of the page, what the clock says. Ratios are within the one run.",
    "",
    ...table([
      ["what", "measured", "budget", "within"],
      ...figures.map((figure) => [figure.what, measured(figure), budget(figure), verdict(figure)]),
    ]),
    "",
  ].join("\n");

export interface Pair {
  readonly before: Figure;
  readonly now: Figure;
}

/** Both trees measured by turns in one run. */
export const comparison = (commit: string, pairs: readonly Pair[]): string =>
  [
    measuredOn(),
    `By turns in the tree as it was at ${commit} and as it is now; processor time, the smallest of all.`,
    "",
    ...table([
      ["what", "before", "now", "now / before"],
      ...pairs.map(({ before, now }) => [
        now.what,
        measured(before),
        measured(now),
        (now.value / before.value).toFixed(2),
      ]),
    ]),
    "",
  ].join("\n");
