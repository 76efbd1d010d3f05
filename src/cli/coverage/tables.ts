/** The tables of the simulations, as Markdown. */
import {
  rows as alarmRows,
  runs as sets,
  shareFlagged,
  slips,
  steps as alarmSteps,
} from "./false-alarms";
import { coarseBench, fineBench, rows as coverageRows, simulateCoverage } from "./interval";

const line = (cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;

const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");

const percent = (share: number, places = 1): string => (100 * share).toFixed(places);

const mL = (step: number): string => `${step} mL`;

/** The two ways of reading: from any place on the burette, and each time from the zero mark. */
const starts = [false, true];

/** Share of intervals that hold the true % FFA. */
function coverage({ scatter, steps }: typeof fineBench | typeof coarseBench): string {
  const columns = steps.flatMap((step) => starts.map((fromZero) => ({ step, fromZero })));
  return table(
    [
      "titres",
      "blanks",
      ...columns.map(({ step, fromZero }) => mL(step) + (fromZero ? ", from zero" : "")),
    ],
    coverageRows.map(({ titres, blanks, seed }) => [
      titres,
      blanks === 0 ? "neutralised" : blanks,
      ...columns.map((column) =>
        percent(simulateCoverage({ titres, blanks, scatter, ...column }, seed)),
      ),
    ]),
  );
}

/** Share of honest sets flagged, the plain test in brackets. */
const falseAlarms = (): string =>
  table(
    ["readings", "scatter, mL", ...alarmSteps.map(mL)],
    alarmRows.map(({ seed, ...row }) => [
      row.count,
      row.scatter,
      ...alarmSteps.map((step) => {
        const { graduated, plain } = shareFlagged({ ...row, step }, 0, seed);
        return `${percent(graduated)} (${percent(plain)})`;
      }),
    ]),
  );

/** Share of sets with one slip that are flagged, a figure for each slip. */
const power = (): string =>
  table(
    ["readings", "scatter, mL", ...alarmSteps.map(mL)],
    alarmRows.map(({ seed, ...row }) => [
      row.count,
      row.scatter,
      ...alarmSteps.map((step) =>
        slips
          .map((slip) => percent(shareFlagged({ ...row, step }, slip, seed).graduated, 0))
          .join(" / "),
      ),
    ]),
  );

export const tables = (): string =>
  [
    `Intervals of 95 % that hold the true % FFA, in % of 20,000 simulated titrations, scatter ${mL(fineBench.scatter)}:`,
    coverage(fineBench),
    `The same where the graduation is coarser than the scatter, ${mL(coarseBench.scatter)} (no pass mark):`,
    coverage(coarseBench),
    `Honest sets flagged, in % of ${sets.toLocaleString("en-GB")}; in brackets by the plain test of Grubbs:`,
    falseAlarms(),
    `Sets flagged when one reading is off by ${slips.map(mL).join(" / ")}, in %:`,
    power(),
  ].join("\n\n");
