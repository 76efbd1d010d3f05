import { describe, expect, it } from "vitest";
import { codeOf, filesUnder, importsOf, type SourceFile } from "./sources-of";

/**
 * The rooms of src, each with the rooms below it that it may import. One direction only: see the map in
 * DEVELOPERS.md.
 */
const may: Record<string, readonly string[]> = {
  "src/core": [],
  "src/functions": ["src/core"],
  // Whatever reads formulas and files knows which names are ours, and not what they work out.
  "src/sheet": ["src/functions/names", "src/core"],
  "src/xlsx": ["src/sheet", "src/functions/names", "src/core"],
  "src/partner": ["src/xlsx", "src/sheet", "src/functions", "src/core"],
  "src/adopt": ["src/xlsx", "src/sheet", "src/functions", "src/core"],
  "src/workbook": [
    "src/partner",
    "src/adopt",
    "src/xlsx",
    "src/sheet",
    "src/functions",
    "src/core",
  ],
  "src/workbench/engine": ["src/workbench", "src/sheet", "src/functions", "src/core"],
  "src/host/excel": ["src/sheet"],
  "src/host/workbench": [
    "src/workbench/engine",
    "src/workbench/look",
    "src/sheet",
    "src/functions",
  ],
  "src/taskpane": [
    "src/workbook",
    "src/partner",
    "src/adopt",
    "src/xlsx",
    "src/sheet",
    "src/functions",
    "src/core",
  ],
  "src/workbench": [
    "src/taskpane",
    "src/host",
    "src/workbook",
    "src/partner",
    "src/adopt",
    "src/xlsx",
    "src/sheet",
    "src/functions",
    "src/core",
  ],
  "src/help": [
    "src/workbook",
    "src/partner",
    "src/adopt",
    "src/sheet",
    "src/functions",
    "src/core",
  ],
  // The engine works out what stands in the sample workbooks.
  "src/cli": [
    "src/help",
    "src/workbench/engine",
    "src/workbook",
    "src/partner",
    "src/adopt",
    "src/xlsx",
    "src/sheet",
    "src/functions",
    "src/core",
  ],
};

const pureRooms = ["core", "functions", "sheet", "xlsx", "partner", "adopt", "workbook"].map(
  (room) => `src/${room}`,
);

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
        const room = partOf(file.path);
        return ![room, ...(may[room] ?? [])].some((part) => isWithin(target, part));
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
      ({ path }) => !["src/workbench", "src/host/workbench"].some((room) => isWithin(path, room)),
    );
    expect(outside.map((file) => file.path)).toEqual([]);
  });

  it("keeps packages out of the core, but for decimal.js", () => {
    const found = within("src/core").flatMap((file) =>
      importsOf(file).filter((target) => !target.startsWith("src/") && target !== "decimal.js"),
    );
    expect(found).toEqual([]);
  });

  it("names no page, clock, file or chance below the pane and the hosts", () => {
    const forbidden =
      /\b(window|document|fetch|localStorage|process|require)\b\s*[.(]|Date\.now|new Date\(\)|Math\.random|from "node:/;
    const found = within(...pureRooms).filter((file) => forbidden.test(codeOf(file)));
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

  it("refers to nothing outside the project, nor do its tests", () => {
    const outside = /\.\.\/shared|\/work\//;
    const here = "tests/rules/imports.test.ts";
    const all = [...files, ...filesUnder("tests").filter(({ path }) => path !== here)];
    expect(all.filter(({ text }) => outside.test(text)).map(({ path }) => path)).toEqual([]);
  });
});
