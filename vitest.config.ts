import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Browser and spreadsheet suites start real programs: give them time. */
const slow = { testTimeout: 600_000, hookTimeout: 600_000 };

/** Quick ones too, on a machine that is busy with something else: a slow machine is no fault. */
const patient = { testTimeout: 400_000, hookTimeout: 400_000 };

const bytes = { setupFiles: ["tests/bytes-alike.ts"] };

/** As `tests/is-wide.ts`, which no configuration may load without its ending. */
const isWide = process.env.WIDE === "1";

/** A test that came by no assertion cannot fail. A page is waited for instead: there it is no rule. */
const sure = {
  setupFiles: [...bytes.setupFiles, "tests/laws-assert.ts"],
  expect: { requireAssertions: true },
};

/** Everything is loaded once a worker, and not once a file: that halves the time. */
const together = { isolate: false, ...bytes };

/** What needs the build, after all else. A page waits more than it works: more of them than cores. */
const built = { maxWorkers: availableParallelism() + 2, sequence: { groupOrder: 1 } };

/** These put something else in a module's or the program's place: each in a process of its own. */
const apart = [
  "tests/xlsx/faults.test.ts",
  "tests/xlsx/broken-writer.test.ts",
  "tests/host/excel*.test.ts",
];

export default defineConfig({
  test: {
    // some wait: for another program, for a formula to be worked out
    maxWorkers: availableParallelism() + 1,
    projects: [
      { test: { name: "unit-apart", include: apart, ...patient, ...sure } },
      {
        test: {
          name: "unit",
          ...together,
          ...sure,
          pool: "threads",
          exclude: apart,
          ...patient,
          include: [
            "tests/core/**/*.test.ts",
            "tests/functions/**/*.test.ts",
            "tests/sheet/**/*.test.ts",
            "tests/xlsx/**/*.test.ts",
            "tests/partner/**/*.test.ts",
            "tests/adopt/**/*.test.ts",
            "tests/workbook/**/*.test.ts",
            "tests/taskpane/**/*.test.ts",
            "tests/host/**/*.test.ts",
            "tests/published/**/*.test.ts",
            "tests/second-opinion/**/*.test.ts",
            "tests/rules/**/*.test.ts",
            "tests/security/**/*.test.ts",
            "tests/cli/**/*.test.ts",
            "tests/pictures/**/*.test.ts",
            "tests/help/**/*.test.ts",
          ],
        },
      },
      {
        test: {
          name: "built",
          include: ["tests/built/**/*.test.ts"],
          ...patient,
          ...together,
          ...built,
        },
      },
      {
        // three rooms in one project: each worker loads what they share but once
        test: {
          name: "programs",
          include: [
            "tests/endurance/**/*.test.ts",
            "tests/workbench/**/*.test.ts",
            "tests/spreadsheet/**/*.test.ts",
          ],
          ...slow,
          ...together,
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          exclude: isWide ? [] : ["tests/browser/wide/**"],
          globalSetup: ["tests/taskpane/page/bundle.ts"],
          ...slow,
          ...together,
          ...built,
        },
      },
    ],
  },
});
