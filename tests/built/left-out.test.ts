/** functions.js leaves out what does not calculate: it must still answer as the catalogue does. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/core/problem/problem";
import { say } from "../../src/core/problem/wording";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "../functions/good-arguments";
import { root } from "../rules/sources-of";

const code = readFileSync(join(root, "dist/functions.js"), "utf8");
const built = new Map<string, (...given: unknown[]) => unknown>();
vm.runInNewContext(code, {
  CustomFunctions: {
    associate: (id: string, call: (...given: unknown[]) => unknown) => built.set(id, call),
  },
});

const ofBuilt = (id: string, given: readonly unknown[]): unknown => {
  try {
    return built.get(id)?.(...given);
  } catch (thrown) {
    return (thrown as Error).message;
  }
};

const figure = fc.oneof(
  fc.double({ min: 1e-6, max: 500, noNaN: true }),
  fc.constantFrom(0, -1, 1e-300, 1e300, "", " ", "KOH", "caustic soda", "2.45", true, null),
);

describe("functions.js beside the catalogue it was built from", () => {
  it.each(catalogue)("$id answers alike, whatever one argument is", ({ id, evaluate }) => {
    const good = goodArguments(id);
    fc.assert(
      fc.property(fc.nat(Math.max(good.length - 1, 0)), figure, (place, value) => {
        const given = good.map((each, at) => (at === place ? value : each));
        const answer = evaluate(given);
        const wanted = isProblem(answer) ? say(answer) : answer;
        expect(JSON.stringify(ofBuilt(id, given))).toBe(JSON.stringify(wanted));
      }),
      { numRuns: 60 },
    );
  });

  it("holds the budget of 42 kB, zipped", () => {
    expect(gzipSync(code, { level: 9 }).length).toBeLessThanOrEqual(42_000);
  });
});
