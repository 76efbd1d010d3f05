/** A workbook that came back from "Check this Excel", turned into the README's list. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { reportIn } from "../../src/cli/scenarios/read-back";
import { testedList } from "../../src/cli/scenarios/tested-list";
import { untested } from "../../src/cli/scenarios/untested";
import { checkLines, type LineId, type Seen } from "../../src/workbook/checking/lines";
import { type Report, sheetOfReport } from "../../src/workbook/checking/report";
import { isFileProblem, newXlsx } from "../../src/xlsx";
import { root } from "../rules/sources-of";

const readme = readFileSync(join(root, "README.md"), "utf8");
const scenarios = readFileSync(join(root, "tests/scenarios.md"), "utf8");

const reportOf = (colours: Partial<Record<LineId, Seen["colour"]>>): Report => ({
  where: {
    titrebook: "0.1.0",
    program: "16.0.1",
    platform: "Mac",
    engine: "Version/17.4",
    day: "2026-12-01",
  },
  seen: checkLines.map(({ id }) => ({ id, colour: colours[id] ?? "green", words: `Saw ${id}.` })),
});

function fileOf(report: Report): Uint8Array {
  const made = newXlsx({ name: "came back", sheets: [sheetOfReport(report)] });
  if (isFileProblem(made)) throw new Error("the file");
  return made;
}

describe("a report that came back", () => {
  it("is read as it was written, whatever colours it holds", () => {
    const report = reportOf({ charts: "red", undo: "amber" });
    expect(reportIn(fileOf(report), "x.xlsx")).toEqual(report);
  });

  it("is refused with a sentence when it is no such workbook", () => {
    const other = newXlsx({
      name: "other",
      sheets: [
        { name: "Log", rows: [[{ value: 1 }]], columnWidths: [], tables: [], frozenRows: 0 },
      ],
    });
    expect(() => reportIn(other as Uint8Array, "log.xlsx")).toThrow(
      /log\.xlsx has no sheet "Titrebook check"/,
    );
    expect(() => reportIn(new Uint8Array([1, 2, 3]), "log.xlsx")).toThrow(/^log\.xlsx: /);
  });

  it("calls tested only what every line it takes saw as green", () => {
    const list = testedList([reportOf({ charts: "red", following: "amber" })]);
    expect(list).toContain("Excel 16.0.1 on the Mac (Version/17.4), Titrebook 0.1.0, 2026-12-01:");
    const [, tested = ""] = /- tested here: (.*)\./.exec(list) ?? [];
    const words = tested.split("; ");
    expect(words).toContain("spills");
    expect(words).not.toContain("charts");
    expect(words).not.toContain("recording");
    expect(list).toContain("  - Charts: Saw charts.");
    expect(list).toMatch(/still untested here: .*charts \(step 3\.12\)/);
  });

  it("never calls tested what only a person can see, were every line green", () => {
    const list = testedList([reportOf({})]);
    const [, tested = ""] = /- tested here: (.*)\./.exec(list) ?? [];
    for (const { words, lines } of untested) {
      expect([words, tested.includes(words)]).toEqual([words, lines.length > 0]);
    }
  });
});

describe("what is untested", () => {
  it("is listed as the README says it, word for word, and nothing is left of its list", () => {
    const [, section = ""] = /## Not yet tried in Excel([^]*?)\n## /.exec(readme) ?? [];
    let points = section
      .split("\n")
      .filter((line) => line.startsWith("- "))
      .join(" ");
    for (const { words } of untested) {
      expect(points).toContain(words);
      points = points.replace(words, "");
    }
    expect(points.replace(/[-;,.\s]/g, "")).toBe("");
  });

  it.each(untested)(
    "has in tests/scenarios.md what would prove it: $words",
    ({ words, lines, steps }) => {
      const names = lines.map((id) => checkLines.find((line) => line.id === id)?.name ?? id);
      const row = scenarios.split("\n").find((line) => line.startsWith(`| ${words} `)) ?? "";
      const cells = row.split("|").map((cell) => cell.trim());
      expect(cells[2]).toBe(names.length === 0 ? "none: a person" : names.join("; "));
      expect(cells[3]).toBe(steps.join(", "));
    },
  );

  it("names steps that there are", () => {
    const there = [...scenarios.matchAll(/^\| (\d+\.\d+) /gm)].map(([, step]) => step);
    const named = [...untested, ...checkLines].flatMap(({ steps }) => steps);
    expect(named.filter((step) => !there.includes(step))).toEqual([]);
  });
});

describe("npm run scenarios -- --read", () => {
  const folder = mkdtempSync(join(tmpdir(), "titrebook-check-"));
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it("prints the list of a file that came back", () => {
    const path = join(folder, "came back.xlsx");
    writeFileSync(path, fileOf(reportOf({})));
    const said = execFileSync(
      process.execPath,
      ["--import", "tsx", join(root, "src/cli/scenarios.ts"), "--read", path],
      { cwd: root, encoding: "utf8" },
    );
    expect(said.trim()).toBe(testedList([reportOf({})]).trim());
  });
});
