import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { outcome } from "./outcome";

const figures = catalogue.flatMap((entry) =>
  entry.arguments.flatMap((argument, position) =>
    argument.limits ? [{ entry, argument, position, limits: argument.limits }] : [],
  ),
);

const refusal = (entry: (typeof figures)[number]["entry"], position: number, value: number) => {
  const given = [...goodArguments(entry.id)];
  const list = entry.arguments[position]?.list;
  given[position] = list ? [[value, ...(given[position] as number[][]).flat().slice(1)]] : value;
  const seen = outcome(entry, given);
  return "error" in seen && seen.message.includes("allowed is") ? seen.message : "";
};

describe("the limits of the arguments", () => {
  it.each(figures)(
    "$entry.id: $argument.name is refused just outside its limits, with the value and the range",
    ({ entry, argument, position, limits }) => {
      const { from, to, fromIncluded } = limits;
      const beyond = Number(to) * 1.001;
      const below = fromIncluded ? Number(from) - 0.01 : Number(from) || -0.01;
      for (const value of [beyond, below]) {
        const message = refusal(entry, position, value);
        expect(message).toContain(argument.name);
        expect(message).toContain(to);
        expect(message).toContain(String(Number(value.toPrecision(10))));
      }
    },
  );

  it.each(figures)(
    "$entry.id: $argument.name takes its highest value",
    ({ entry, position, limits }) => {
      expect(refusal(entry, position, Number(limits.to))).toBe("");
    },
  );

  it.each(figures)(
    "$entry.id: 0 in $argument.name is not a value out of range: it means not filled in",
    ({ entry, position }) => {
      expect(refusal(entry, position, 0)).toBe("");
    },
  );
});
