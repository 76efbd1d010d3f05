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
