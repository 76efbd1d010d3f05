import { describe, expect, it } from "vitest";
import { cyclesOf } from "./cycles-of";
import { doors, houseOf, imported, isThroughDoor } from "./doors";
import { exceptions, isWithin, mayImport, roomOf } from "./rooms";
import { codeOf, filesUnder, importsOf, meantBy, type SourceFile } from "./sources-of";

const pureRooms = ["core", "functions", "sheet", "xlsx", "partner", "adopt", "workbook"].map(
  (room) => `src/${room}`,
);

const files = filesUnder("src");

const offences = (rule: (file: SourceFile) => string[]): string[] =>
  files.flatMap((file) => rule(file).map((what) => `${file.path}: ${what}`));

const within = (...parts: string[]) =>
  files.filter((file) => parts.some((p) => isWithin(file.path, p)));

describe("the architecture", () => {
  it("places every source file in a known room", () => {
    expect(files.filter(({ path }) => !roomOf(path)).map(({ path }) => path)).toEqual([]);
  });

  it("has imports that run one way", () => {
    const found = offences((file) =>
      importsOf(file).filter((it) => it.startsWith("src/") && !mayImport(file.path, it)),
    );
    expect(found).toEqual([]);
  });

  it("has rooms that are entered by their doors", () => {
    const meant = meantBy(files);
    const found = offences((file) =>
      importsOf(file)
        .map(meant)
        .filter((it) => it.startsWith("src/") && !isThroughDoor(file.path, it)),
    );
    expect(found).toEqual([]);
  });

  it("has no door that nobody uses", () => {
    const meant = meantBy(files);
    const used = new Set(
      files.flatMap((file) =>
        importsOf(file)
          .map(meant)
          .filter((it) => houseOf(it) !== houseOf(file.path))
          .flatMap((it) => [imported(it), `${imported(it)} for ${houseOf(file.path)}`]),
      ),
    );
    const idle = doors
      .map(([file, to]) => (to === undefined ? file : `${file} for ${to}`))
      .filter((it) => !used.has(it));
    expect(idle).toEqual([]);
  });

  it("takes nothing from the tests", () => {
    const found = offences((file) => importsOf(file).filter((it) => isWithin(it, "tests")));
    expect(found).toEqual([]);
  });

  it("has no exception that nothing needs", () => {
    const needed = ([file, to]: (typeof exceptions)[number]): boolean =>
      within(file).some((each) => importsOf(each).some((target) => isWithin(target, to)));
    expect(exceptions.filter((each) => !needed(each))).toEqual([]);
  });

  it("has no two files that need each other, by value or by type", () => {
    const all = [...files, ...filesUnder("tests")];
    const meant = meantBy(all);
    const edges = new Map(all.map((file) => [file.path, importsOf(file).map(meant)]));
    expect(cyclesOf(edges)).toEqual([]);
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
        file.path !== "src/functions/register.ts" &&
        // a property of a part of the file is called so
        file.path !== "src/xlsx/patch/pane.ts",
    );
    expect(found.map((file) => file.path)).toEqual([]);
  });

  it("refers to nothing outside the project, nor do its tests", () => {
    const outside = /\.\.\/shared|\/work\//;
    const here = "tests/rules/imports.test.ts";
    const all = [...files, ...filesUnder("tests").filter(({ path }) => path !== here)];
    expect(all.filter(({ text }) => outside.test(text)).map(({ path }) => path)).toEqual([]);
  });
});
