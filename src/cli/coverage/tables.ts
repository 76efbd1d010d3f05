/** The tables of the simulations, as Markdown. */
import {
  rows as alarmRows,
  runs as sets,
  shareFlagged,
  slips,
  steps as alarmSteps,
} from "./false-alarms";
import { coarseBench, fineBench, rows as coverageRows, simulateCoverage } from "./interval";
import { mL, percent, table } from "./markdown";
import { doubtedSets, uncounted, withRecord } from "./record-tables";

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

const reading =
  "Read: by a test alone three readings cannot settle an outlier (a slip of 0.3 mL is seen in 7 sets of 100 at best), which is why three that lie apart are called so whatever the test says, and why the verdict on three asks for a fourth. The plain test of Grubbs flags up to 62 % of honest sets of three read to coarse graduations; with the graduation counted in, at most 5 %. A record of ten titrations takes a third off the ± of three titres, four fifths off that of two, gives one titre a ±, and finds a slip of 0.3 mL in 97 sets of 100. What nobody typed no interval can cover, and more titres make it worse.";

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
    "Intervals of 95 % that hold the true % FFA where something is wrong that no one typed, one blank, scatter 0.03 mL read to 0.05 mL, in %:",
    uncounted(),
    "With a record of the same hand, titrations of three titres each, one blank today: intervals that hold the true % FFA, in %; in brackets the ± that half of them stay below, in % of the FFA:",
    withRecord(),
    `Sets of three called suspect or apart, read to 0.05 mL: honest ones / with one reading off by ${slips.map(mL).join(" / ")}, in %:`,
    doubtedSets(),
    reading,
  ].join("\n\n");
