import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { spawnSync } from "node:child_process";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { createFunction } from "../../src/cli/new-function/create";
import { nameRefusal } from "../../src/cli/new-function/name";
import { idsIn, withEntry, withName } from "../../src/cli/new-function/texts";
import { catalogue } from "../../src/functions/catalogue";
import { root } from "../rules/sources-of";

const cataloguePath = "src/functions/catalogue.ts";

describe("the name of a new function", () => {
  it.each([
    ["", /Give the function a name/],
    ["AV1", /could be read as a cell/],
    ["FFA1", /could be read as a cell/],
    ["XFD1048576", /could be read as a cell/],
    ["R1C1", /could be read as a cell/],
    ["RC", /could be read as a cell/],
    ["DRYING.TIME", /other than the letters A to Z/],
    ["DRYING_TIME", /other than the letters A to Z/],
    ["FFAX1", /other than the letters A to Z/],
    ["DRYINGTIMÉ", /other than the letters A to Z/],
    ["AB", /too short/],
    ["A".repeat(25), /too long/],
    ["DOSE", /taken/],
    ["SUM", /spreadsheets have already/],
    ["YIELD", /spreadsheets have already/],
    ["LAMBDA", /spreadsheets have already/],
  ])("is refused when it is %s", (name, sentence) => {
    expect(nameRefusal(name, ["DOSE"])).toMatch(sentence);
  });

  it("is fine when it is letters that nobody has taken, as all of ours are", () => {
    expect(nameRefusal("TRIALFUNCTION", ["DOSE"])).toBeUndefined();
    for (const { id } of catalogue) expect(nameRefusal(id, []), id).toBeUndefined();
  });
});

describe("the catalogue's text", () => {
  const text = readFileSync(join(root, cataloguePath), "utf8");

  it("lists the ids that the catalogue holds", () => {
    expect(idsIn(text)).toEqual(catalogue.map(({ id }) => id));
  });

  it("takes a new function at its end, and its import in its place", () => {
    const wanted = { id: "TRIALFUNCTION", family: "batch", file: "dose-trial" };
    const lines = withEntry(text, wanted).split("\n");
    expect(idsIn(lines.join("\n"))).toEqual([...idsIn(text), "TRIALFUNCTION"]);
    const at = lines.indexOf('import { TRIALFUNCTION } from "./batch/dose-trial";');
    expect(lines[at - 1]).toBe('import { DOSE } from "./batch/dose";');
    expect(lines.filter((_, place) => place !== at && lines[place] !== "  TRIALFUNCTION,")).toEqual(
      text.split("\n"),
    );
  });
});

describe("the list of names", () => {
  it("takes a new function at its end", () => {
    const text = readFileSync(join(root, "src/functions/names.ts"), "utf8");
    const wanted = { id: "TRIALFUNCTION", family: "batch", file: "dose-trial" };
    const lines = withName(text, wanted).split("\n");
    const at = lines.findIndex((line) => line.startsWith("  TRIALFUNCTION:"));
    expect(lines[at - 1]).toBe(`  ${catalogue.at(-1)?.id ?? ""}: "table",`);
    expect(lines.filter((_, place) => place !== at)).toEqual(text.split("\n"));
  });
});

describe("npm run new-function", () => {
  let top = "";
  const at = (path: string): string => join(top, path);
  const read = (path: string): string => readFileSync(at(path), "utf8");

  beforeEach(() => {
    top = mkdtempSync(join(tmpdir(), "titrebook-new-function-"));
    cpSync(join(root, "src/functions"), at("src/functions"), { recursive: true });
    mkdirSync(at("tests/functions"), { recursive: true });
  });
  afterEach(() => {
    rmSync(top, { recursive: true, force: true });
  });

  it("makes an entry, a test and a place in the catalogue, and says what comes next", () => {
    const made = createFunction(
      ["trialfunction", "--family", "batch", "--file", "dose-trial"],
      top,
    );
    expect(made.isDone).toBe(true);
    expect(made.text).toMatch(/src\/functions\/batch\/dose-trial\.ts/);
    expect(made.text).toMatch(/Its tests fail until it is written/);
    expect(read("src/functions/batch/dose-trial.ts")).toContain(
      "export const TRIALFUNCTION = worksheetFunction(",
    );
    expect(read("tests/functions/batch/dose-trial.test.ts")).toContain('describe("TRIALFUNCTION"');
    expect(idsIn(read(cataloguePath)).at(-1)).toBe("TRIALFUNCTION");
  });

  it("names the file after the function when no file is named", () => {
    createFunction(["TRIALFUNCTION"], top);
    expect(existsSync(at("src/functions/titration/trialfunction.ts"))).toBe(true);
  });

  it.each([
    ["a taken name", ["DOSE"], /taken/],
    ["no name", [], /Give the function a name/],
    ["an unknown family", ["TRIALFUNCTION", "--family", "soup"], /no family soup.*batch/],
    ["a family outside its folder", ["TRIALFUNCTION", "--family", "../core"], /no family/],
    ["a file outside its folder", ["TRIALFUNCTION", "--file", "../dose"], /--file is/],
    [
      "a file that is there",
      ["TRIALFUNCTION", "--family", "batch", "--file", "dose"],
      /there already/,
    ],
  ])("writes nothing for %s", (_, args, sentence) => {
    const before = read(cataloguePath);
    const { isDone, text } = createFunction(args, top);
    expect(isDone).toBe(false);
    expect(text).toMatch(sentence);
    expect(read(cataloguePath)).toBe(before);
    expect(existsSync(at("tests/functions/batch"))).toBe(false);
  });

  it("makes files in the house style whose tests fail until they are filled in", () => {
    for (const part of [
      "src/core",
      "src/sheet",
      "src/workbook/explain",
      "tests/functions",
      "tests/sheet",
    ]) {
      cpSync(join(root, part), at(part), { recursive: true });
    }
    for (const part of ["node_modules", "tsconfig.json", ".prettierrc.json", "package.json"]) {
      symlinkSync(join(root, part), at(part));
    }
    createFunction(["TRIALFUNCTION", "--family", "batch", "--file", "dose-trial"], top);
    const run = (tool: string, ...args: string[]) =>
      spawnSync(process.execPath, [join(root, "node_modules", tool), ...args], {
        cwd: top,
        encoding: "utf8",
      });
    const entry = "src/functions/batch/dose-trial.ts";
    const test = "tests/functions/batch/dose-trial.test.ts";
    const styled = run("prettier/bin/prettier.cjs", "--check", entry, test, cataloguePath);
    expect(styled.stderr).toBe("");
    const tests = run("vitest/vitest.mjs", "run", "--root", top, "tests/functions/examples", test);
    expect(tests.status).toBe(1);
    expect(tests.stdout).toMatch(/TRIALFUNCTION' gives what it says/);
    expect(tests.stdout).toMatch(/2 failed|3 failed|4 failed/);
  }, 60_000);
});
