/** The script for Google Sheets, in a context that has the language and nothing else. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { root } from "../rules/sources-of";
import { built, isRight, type Seen } from "../vectors";

const folder = join(root, "dist/other/google-sheets");
const script = readFileSync(join(folder, "titrebook.js"), "utf8");

const sheet = vm.createContext(Object.create(null) as object);
vm.runInContext(script, sheet);

/** As a cell would: figures, texts and dates made there, nothing handed in from outside. */
const inCell = (written: string): unknown =>
  JSON.parse(String(vm.runInContext(`JSON.stringify(${written})`, sheet)));

/** What the note at a cell says of a failure, apart from the sentence. */
function codeOf(thrown: unknown): string {
  const { message } = thrown as Error;
  const [, code = "", sentence = ""] = /^(#N\/A|#VALUE!) (.+)$/.exec(message) ?? [];
  expect(sentence.length).toBeGreaterThanOrEqual(6);
  return code;
}

function shown(written: string): Seen {
  try {
    return { value: inCell(written) };
  } catch (thrown) {
    return { error: codeOf(thrown) };
  }
}

/** An empty cell of a range arrives as an empty text, an error as its text, what is left out as nothing. */
function arriving(given: unknown): unknown {
  if (Array.isArray(given)) return given.map((each: unknown) => arriving(each) ?? "");
  if (typeof given === "object" && given !== null)
    return (given as { basicValue: string }).basicValue;
  return given;
}

const written = (args: readonly unknown[]): string =>
  args.map((each) => (each === null ? "undefined" : JSON.stringify(arriving(each)))).join(", ");

/** Each doc comment with the declaration below it. */
const documented = [
  ...script.matchAll(/^\/\*\*\n((?: \*.*\n)+?) \*\/\nfunction (\w+)\((.*)\) \{$/gm),
].map(([, comment = "", name = "", taken = ""]) => ({ comment, name, taken }));

describe("the script for Google Sheets", () => {
  it.each(built)("answers $fn as it must: $why", ({ fn, args, ...vector }) => {
    const seen = shown(`TITRE_${fn}(${written(args)})`);
    expect(isRight(seen, { fn, args, ...vector }), JSON.stringify(seen)).toBe(true);
  });

  it("declares every function of the catalogue once, by the one name with no dot", () => {
    expect(documented.map(({ name }) => name).sort()).toEqual(
      catalogue.map(({ id }) => `TITRE_${id}`).sort(),
    );
  });

  it("leaves nothing else for a cell to call: every other name ends with _", () => {
    const others = Object.getOwnPropertyNames(sheet).filter((name) => !name.startsWith("TITRE_"));
    expect(others.length).toBeGreaterThan(0);
    expect(others.filter((name) => !name.endsWith("_"))).toEqual([]);
  });

  it.each(documented)("tells $name's arguments by name and in order, and marks it", (each) => {
    const named = [...each.comment.matchAll(/^ \* @param \{[^}]+\} (\w+) \S.*$/gm)];
    expect(named.map(([, name]) => name).join(", ")).toBe(each.taken);
    expect(each.comment).toMatch(/^ \* [A-Z]/);
    expect(each.comment).toMatch(/\n \* @return \S.*\n \* @customfunction\n$/);
  });

  it("names an error that arrives as its text, and passes #N/A on as not there yet", () => {
    expect(shown('TITRE_ACIDVALUE(2.3, 0.1, "#N/A")')).toEqual({ error: "#N/A" });
    expect(shown('TITRE_ACIDVALUE(2.3, 0.1, "#DIV/0!")')).toEqual({ error: "#VALUE!" });
    expect(() => inCell('TITRE_ACIDVALUE(2.3, 0.1, "#ERROR!")')).toThrow(/#ERROR!/);
    expect(shown('TITRE_ACIDVALUE(2.3, 0.1, "#10")')).toEqual({ error: "#VALUE!" });
  });

  it("reads a date as the count of days that its cell shows", () => {
    // 45658 is 1 January 2025, counted by hand; the figures are the example's own
    const days = "[[new Date(2025, 0, 1)], [45668], [new Date(2025, 0, 21)]]";
    const strengths = "[[0.1], [0.0995], [0.0992]]";
    const [first] = inCell(`TITRE_STRENGTHON(${days}, ${strengths}, new Date(2025, 0, 31))`) as [
      [string, number, string],
    ];
    expect(first[1]).toBeCloseTo(0.0987666667, 9);
  });

  it("stands beside a page that leads to it and to the help", () => {
    const page = readFileSync(join(folder, "index.html"), "utf8");
    expect(page).toContain("Apps Script");
    const leads = [...page.matchAll(/(?:href|src)="([^"#]+)/g)].map(([, to = ""]) => to);
    expect(leads.length).toBeGreaterThan(4);
    for (const to of leads) expect(() => readFileSync(join(folder, to))).not.toThrow();
  });
});
