/** The checks that a workbook shows name the place of a published case, which was typed apart from them. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checks } from "../../src/functions/uncertainty/checks";
import { root } from "../rules/sources-of";

const folder = join(root, "tests/published/cases");
const cases = readdirSync(folder).flatMap(
  (name) =>
    JSON.parse(readFileSync(join(folder, name), "utf8")) as { where: string; expect: string }[],
);
const named = checks.flatMap(({ check, where, expected }) =>
  where === undefined ? [] : [{ check, where, expected }],
);

describe("where a check is printed", () => {
  it("is named for more than ten of them", () => {
    expect(named.length).toBeGreaterThan(10);
  });

  it.each(named)("is the place of a published case: $check", ({ where, expected }) => {
    const same = cases.filter((each) => each.expect === expected);
    expect(same.map((each) => each.where.slice(0, where.length))).toContain(where);
  });
});

describe("how near a check must come", () => {
  /** "(within 2 %)", "(printed cut off, within 0.01 %)", "(within 1e-9)": relative. */
  function saidIn(name: string): number {
    const [, figure, percent] = /within ([\d.e-]+)( %)?\)/.exec(name) ?? [];
    return Number(figure ?? 0) / (percent === undefined ? 1 : 100);
  }

  it.each(checks)("is what its name says, or the digits printed: $check", ({ check, within }) => {
    expect(within ?? 0).toBeCloseTo(saidIn(check), 14);
  });

  it("is said in the names of some, and not in those of most", () => {
    const said = checks.filter(({ check }) => saidIn(check) > 0).length;
    expect(said).toBeGreaterThan(3);
    expect(said).toBeLessThan(checks.length / 4);
  });
});
