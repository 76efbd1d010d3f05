import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { outcome } from "./outcome";
import { times } from "../thorough";

/** Whatever a cell, a host or a careless caller can hand over. */
const cell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.double() },
  { weight: 2, arbitrary: fc.double({ min: 1e-12, max: 1000, noNaN: true }) },
  fc.integer(),
  fc.constantFrom(
    0,
    -0,
    5e-324,
    -5e-324,
    1e-300,
    1e300,
    Number.MAX_VALUE,
    Number.MIN_VALUE,
    1e-15,
    0.1 + 0.2,
    NaN,
    Infinity,
    -Infinity,
    1000,
    1000.0000000001,
    2,
    100,
    1,
    1.0000000000000002,
    28.2,
  ),
  fc.string({ maxLength: 80 }),
  fc.constantFrom(
    "KOH",
    "oleic",
    "l",
    "gal",
    "tallow",
    "neutralised",
    "=1+1",
    "<b>",
    "#N/A",
    "1e5",
    "2,35",
    "constructor",
    "__proto__",
    "toString",
    "\u0000",
    "ß".repeat(100),
    "\n\n",
    " koh ",
  ),
  fc.boolean(),
  fc.constantFrom(null, undefined, "", " "),
  fc.bigInt(),
  fc.date(),
  fc.constantFrom<unknown>(
    Symbol("cell"),
    () => 1,
    {},
    { valueOf: () => 2.3 },
    { type: "Error", basicValue: "#NUM!" },
    { type: "Error" },
    { type: "Entity", basicType: "Error", basicValue: "#VALUE!" },
    { type: "Entity", text: "x" },
    { type: "Double", basicValue: { type: "Double", basicValue: 1 } },
    { basicValue: NaN },
    { code: "#N/A" },
    { code: 7 },
    { functionName: "X", setResult: null },
    new Error("boom"),
    Object.create(null),
  ),
);
const grid = fc.array(fc.oneof(fc.array(cell, { maxLength: 4 }), cell), { maxLength: 4 });
const argument = fc.oneof({ weight: 3, arbitrary: cell }, grid);

/** What is wrong with an answer. So many are looked at that an `expect` each would take most of the time. */
function faultsOf(seen: ReturnType<typeof outcome>): string[] {
  if ("error" in seen) {
    const { error, message } = seen;
    // what was given may be any word, and is quoted
    const ours = message.replace(/"[^"]*"/g, "");
    return [
      ...(error === "#N/A" || error === "#VALUE!" ? [] : ["no error of ours"]),
      ...(message.length >= 6 && message.length <= 200 ? [] : ["not the length of a sentence"]),
      ...(message.includes("\n") ? ["more than a line"] : []),
      ...(/undefined|null|NaN|\[object/.test(ours) ? ["no word for a person"] : []),
      ...(/[.?]$/.test(message) ? [] : ["no end of a sentence"]),
    ];
  }
  return [seen.value].flat(2).flatMap((value) => {
    if (typeof value === "string" || typeof value === "boolean") return [];
    if (typeof value !== "number") return [`a ${typeof value}`];
    return Number.isFinite(value) ? [] : ["no finite figure"];
  });
}

function expectDecent(seen: ReturnType<typeof outcome>): void {
  const faults = faultsOf(seen);
  if (faults.length > 0) expect.unreachable(faults.join(", "));
}

describe("hostile cells", () => {
  it.each(catalogue.filter((entry) => entry.arguments.length > 0))(
    "$id: anything in any one argument ends in a decent value or in a sentence",
    (entry) => {
      const good = goodArguments(entry.id);
      for (const [position] of entry.arguments.entries()) {
        fc.assert(
          fc.property(argument, (value) => {
            const given = [...good];
            given[position] = value;
            expectDecent(outcome(entry, given));
          }),
          { numRuns: times(80) },
        );
      }
    },
  );

  it.each(catalogue)("$id: anything in every argument at once does too", (entry) => {
    fc.assert(
      fc.property(fc.array(argument, { maxLength: entry.arguments.length + 2 }), (given) => {
        expectDecent(outcome(entry, given));
      }),
      { numRuns: times(100) },
    );
  });

  it.each(catalogue)("$id: extreme figures within the limits give a finite answer", (entry) => {
    const figures = (place: number): fc.Arbitrary<unknown> => {
      const found = entry.arguments[place];
      if (!found?.limits || found.words) return fc.constant(goodArguments(entry.id)[place]);
      const { from, to } = found.limits;
      const low = Number(from);
      const edges = fc.constantFrom(low, Number(to), low + 1e-9, 5e-324, 1e-300, Number(to) - 1e-9);
      const value = fc.oneof(edges, fc.double({ min: low, max: Number(to), noNaN: true }));
      return found.list ? fc.array(fc.array(value, { maxLength: 3 }), { maxLength: 3 }) : value;
    };
    const all = fc.tuple(...entry.arguments.map((_, place) => figures(place)));
    fc.assert(
      fc.property(all, (given) => {
        expectDecent(outcome(entry, given));
      }),
      { numRuns: times(100) },
    );
  });

  it.each(catalogue)("$id: no result is negative", (entry) => {
    const seen = outcome(entry, goodArguments(entry.id));
    if (!("value" in seen)) throw new Error(seen.message);
    expect([seen.value].flat(2).filter((value) => typeof value === "number" && value < 0)).toEqual(
      [],
    );
  });
});
