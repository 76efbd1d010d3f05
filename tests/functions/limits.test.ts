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

const notMolar = "is it g/L? 1 g/L of KOH is 0.0178 mol/L; MOLARITY converts";

/** What a figure beyond its range is often a slip for, typed by hand. */
const slips: Record<string, { below?: string; above?: string }> = {
  molarity: { above: notMolar },
  strengths: { above: notMolar },
  assayPercent: { below: "assay is in percent: write 90, not 0.90" },
  acidAssayPercent: { below: "assay is in percent: write 90, not 0.90" },
  baseCharge: { above: "is it g/L? 3.5 g/L is 0.38 %: CHARGEPERCENT converts" },
  molarRatio: { above: "is it % by volume? MOLARRATIO converts" },
  usualFreedom: { above: "more makes no difference: write 1000" },
  confidencePercent: { below: "confidence is in percent: write 95, not 0.95" },
  pressureRise: { above: "is it in Pa or mbar? 1 kPa is 10 mbar" },
  fattyAcid: { below: "28.2 is the AOCS factor for oleic: write 282" },
};
const slipsOf = (id: string, name: string): { below?: string; above?: string } =>
  id === "MOLARITYFROMKHP" && name === "purityPercent"
    ? { below: "purity is in percent: write 99.9, not 0.999" }
    : (slips[name] ?? {});

describe("the limits of the arguments", () => {
  it.each(figures)(
    "$entry.id: $argument.name ends with what it is a slip for on that side, and with nothing else",
    ({ entry, argument, position, limits }) => {
      const { from, to, fromIncluded } = limits;
      const { below, above } = slipsOf(entry.id, argument.name);
      const end = (value: number): string | undefined =>
        / \((.*)\)\.$/.exec(refusal(entry, position, value))?.[1];
      expect(end(Number(to) * 1.001)).toBe(above);
      expect(end(fromIncluded ? Number(from) - 0.01 : Number(from) || -0.01)).toBe(below);
    },
  );

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
