import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { withMadeParts } from "../../src/help/readme";
import { evaluateFormula } from "../functions/evaluate-formula";
import { root } from "../rules/sources-of";

const readme = readFileSync(join(root, "README.md"), "utf8");

/** The rows of the worked titration: formula, and the figure worked out by hand. */
const worked = [...readme.matchAll(/^\| `(=TITRE[^`]+)` +\| ([\d.]+)[^|]*\|/gm)].map(
  ([, formula = "", shown = ""]) => ({ formula, shown }),
);

describe("the README", () => {
  it("opens with one paragraph that states the job", () => {
    const [title, paragraph] = readme.split("\n\n");
    expect(title).toBe("# Titrebook");
    expect(paragraph?.length).toBeGreaterThan(300);
    expect(paragraph).toContain("titrates the oil");
  });

  it("shows the cautions as they are", () => {
    expect(withMadeParts(readme)).toBe(readme);
  });

  it.each([
    ["README.md", 10_000],
    ["DEVELOPERS.md", 12_000],
  ])("%s can be read in one go: less than %i bytes", (name, most) => {
    expect(readFileSync(join(root, name)).length).toBeLessThan(most);
  });

  it("has a worked titration of seven steps", () => {
    expect(worked).toHaveLength(7);
  });

  it.each(worked)("$formula shows $shown", ({ formula, shown }) => {
    const answer = evaluateFormula(formula);
    expect(typeof answer).toBe("number");
    const places = shown.split(".")[1]?.length ?? 0;
    expect(Number(answer).toFixed(places)).toBe(Number(shown).toFixed(places));
  });
});
