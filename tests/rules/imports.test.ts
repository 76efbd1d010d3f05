import { describe, expect, it } from "vitest";
import { codeOf, filesUnder, importsOf, type SourceFile } from "./sources-of";

/** Which parts of src a part may import. One direction only: see the map in DEVELOPERS.md. */
const may: Record<string, readonly string[]> = {
  "src/core": ["src/core"],
  "src/functions": ["src/functions", "src/core"],
  "src/workbook": ["src/workbook", "src/functions", "src/core"],
  // A plan ends in steps for a host: the port is values alone, and imports what a block of cells is.
  "src/workbook/planning": ["src/workbook", "src/functions", "src/core", "src/host/port"],
  "src/workbook/healing": ["src/workbook", "src/functions", "src/core", "src/host/port"],
  "src/host/port": ["src/host/port", "src/workbook/area"],
  "src/host/memory": ["src/host/memory", "src/host/port"],
  "src/host/excel": ["src/host/excel", "src/host/port"],
  "src/host/workbench": [
    "src/host/workbench",
    "src/host/port",
    "src/functions",
    "src/workbench/engine",
    "src/workbench/look",
  ],
  "src/taskpane": ["src/taskpane", "src/host/port", "src/workbook", "src/functions", "src/core"],
  "src/workbench": [
    "src/workbench",
    "src/taskpane",
    "src/host",
    "src/workbook",
    "src/functions",
    "src/core",
  ],
  "src/help": ["src/help", "src/functions", "src/workbook", "src/core"],
  // The engine works out what stands in the sample workbooks.
  "src/cli": [
    "src/cli",
    "src/help",
    "src/workbench/engine",
    "src/functions",
    "src/workbook",
    "src/core",
  ],
};

/** The one file of the pane that knows which spreadsheet program it runs in. */
const paneStart = /^src\/taskpane\/start\.tsx$/;

const isWithin = (path: string, part: string): boolean =>
  path === part || path.startsWith(`${part}/`) || path.startsWith(`${part}.`);

const partOf = (path: string): string =>
  Object.keys(may)
    .filter((part) => isWithin(path, part))
    .sort((a, b) => b.length - a.length)[0] ?? "";

const files = filesUnder("src");

const offences = (rule: (file: SourceFile) => string[]): string[] =>
  files.flatMap((file) => rule(file).map((what) => `${file.path}: ${what}`));

const within = (...parts: string[]) =>
  files.filter((file) => parts.some((p) => isWithin(file.path, p)));

describe("the architecture", () => {
  it("places every source file in a known part", () => {
    expect(files.filter((file) => partOf(file.path) === "").map((file) => file.path)).toEqual([]);
  });

  it("has imports that run one way", () => {
    const found = offences((file) =>
      importsOf(file).filter((target) => {
        if (!target.startsWith("src/")) return false;
        if (paneStart.test(file.path) && isWithin(target, "src/host/excel")) return false;
        const allowed = may[partOf(file.path)] ?? [];
        return !allowed.some((part) => isWithin(target, part));
      }),
    );
    expect(found).toEqual([]);
  });

  it("imports decimal.js in src/core/exact alone", () => {
    const importers = files.filter((file) => importsOf(file).includes("decimal.js"));
    expect(importers.map((file) => file.path)).toEqual(["src/core/exact/exact.ts"]);
  });

  it("imports the embedded spreadsheet in the workbench and its host alone", () => {
    const importers = files.filter((file) =>
      importsOf(file).some((t) => t.startsWith("@univerjs/")),
    );
    const outside = importers.filter(
      (file) => !isWithin(file.path, "src/workbench") && !isWithin(file.path, "src/host/workbench"),
    );
    expect(outside.map((file) => file.path)).toEqual([]);
  });

  it("keeps packages out of the core, but for decimal.js", () => {
    const found = within("src/core").flatMap((file) =>
      importsOf(file).filter((target) => !target.startsWith("src/") && target !== "decimal.js"),
    );
    expect(found).toEqual([]);
  });

  it("names no page, clock, file or chance in core, functions and workbook", () => {
    const forbidden =
      /\b(window|document|fetch|localStorage|process|require)\b\s*[.(]|Date\.now|new Date\(\)|Math\.random|from "node:/;
    const found = within("src/core", "src/functions", "src/workbook").filter((file) =>
      forbidden.test(codeOf(file)),
    );
    expect(found.map((file) => file.path)).toEqual([]);
  });

  it("names Office, Excel and CustomFunctions in their two adapters alone", () => {
    const found = files.filter(
      (file) =>
        /\b(Office|Excel|CustomFunctions)\./.test(codeOf(file)) &&
        !isWithin(file.path, "src/host/excel") &&
        file.path !== "src/functions/register.ts",
    );
    expect(found.map((file) => file.path)).toEqual([]);
  });

  it("keeps source files under 200 lines", () => {
    const long = files.filter((file) => file.text.split("\n").length > 201);
    expect(long.map((file) => file.path)).toEqual([]);
  });

  it("refers to nothing outside the project", () => {
    expect(
      offences((file) => (/\.\.\/shared|\/work\//.test(file.text) ? ["outside"] : [])),
    ).toEqual([]);
  });
});
