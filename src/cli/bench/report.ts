/** The figures as a table, with the machine, the versions and the day they were measured on. */
import { cpus, release, totalmem, type } from "node:os";
import { version as library } from "mathjs";
import type { Figure } from "./figure";

const machine = (): string => {
  const [first] = cpus();
  const memory = Math.round(totalmem() / 2 ** 30);
  return `${String(cpus().length)} x ${first?.model.trim() ?? "unknown processor"}, ${String(memory)} GiB, ${type()} ${release()}`;
};

const verdict = ({ isWithin }: Figure): string =>
  isWithin === undefined ? "" : isWithin ? "yes" : "NO";

export const report = (figures: readonly Figure[]): string =>
  [
    `Measured ${new Date().toISOString().slice(0, 10)} on ${machine()}; Node ${process.version}, mathjs ${library}.`,
    "Smallest of several runs by turns; ratios are within the one run.",
    "",
    "| what | measured | budget | within |",
    "| --- | --- | --- | --- |",
    ...figures.map(
      (figure) => `| ${figure.what} | ${figure.measured} | ${figure.budget} | ${verdict(figure)} |`,
    ),
    "",
  ].join("\n");
