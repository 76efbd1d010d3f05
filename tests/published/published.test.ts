/**
 * Published results, as data in cases/*.json. Each case names its source and place, the figures given
 * and the figure printed there; the core works it out, and got, expected and difference are shown.
 */
import { readdirSync, readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { type FunctionName, functions } from "./functions";

interface Case {
  source: string;
  where: string;
  /** What is found, in words. */
  finds: string;
  function: FunctionName;
  given: unknown;
  /** As printed, digits and all. */
  expect: string;
  /** How near: rounds to what is printed (left out), units of the last printed digit, relative, digits. */
  within?: { units?: number; relative?: number; digits?: number };
  note?: string;
}

const folder = new URL("cases/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const casesOf = (file: string): Case[] =>
  JSON.parse(readFileSync(new URL(file, folder), "utf8")) as Case[];

const lastDigit = (printed: string): number => {
  const decimals = /\.(\d*)/.exec(printed)?.[1]?.length ?? 0;
  return 10 ** -decimals;
};

/** The largest difference a case allows. */
function allowed({ expect: printed, within }: Case): number {
  const value = Math.abs(Number(printed));
  if (within?.relative !== undefined) return within.relative * value;
  if (within?.digits !== undefined) return 10 ** -within.digits * value;
  const rounding = 1e-9;
  return ((within?.units ?? 0.5) + rounding) * lastDigit(printed);
}

const lines: string[] = [];

for (const file of files) {
  describe(file.replace(".json", ""), () => {
    for (const each of casesOf(file)) {
      it(`${each.source}, ${each.where}: ${each.finds} is ${each.expect}`, () => {
        const work = functions[each.function] as (given: unknown) => number;
        const got = work(each.given);
        const difference = got - Number(each.expect);
        const line = `${each.source}, ${each.where}: ${each.finds}: got ${got.toPrecision(10)}, expected ${each.expect}, difference ${difference.toExponential(1)}`;
        lines.push(line);
        expect(Math.abs(difference), line).toBeLessThanOrEqual(allowed(each));
      });
    }
  });
}

afterAll(() => {
  console.log(lines.join("\n"));
});
