/** Two ranges pair cell by cell: ranges of another shape are refused, by the names of both. */
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { call, outcome } from "./outcome";

/** Typed by hand: which arguments pair. */
const paired: readonly (readonly [id: string, first: string, second: string])[] = [
  ["MEANACIDVALUE", "titres", "sampleMasses"],
  ["EACHACIDVALUE", "titres", "sampleMasses"],
  ["DOSE", "titres", "sampleMasses"],
  ["OUTLIERS", "readings", "sampleMasses"],
  ["VERDICT", "readings", "sampleMasses"],
  ["SPREAD", "readings", "sampleMasses"],
  ["FFAUNCERTAINTY", "titres", "sampleMasses"],
  ["BUDGET", "titres", "sampleMasses"],
  ["ACIDVALUEUNCERTAINTY", "titres", "sampleMasses"],
  ["KHPUNCERTAINTY", "titres", "khpMasses"],
  ["BLENDEDACIDVALUE", "acidValues", "masses"],
  ["STRENGTHON", "dates", "strengths"],
  ["ENDPOINT", "volumes", "readings"],
  ["STEEPNESS", "volumes", "readings"],
];

const sizes = [1, 2, 3];
const shapes = sizes.flatMap((rows) => sizes.map((columns) => [rows, columns] as const));

describe("two ranges that pair", () => {
  it.each(paired)(
    "%s refuses %s and %s of two shapes, and takes two lines",
    (id, first, second) => {
      const entry = catalogue.find((each) => each.id === id);
      const names = (entry?.arguments ?? []).map(({ name }) => name);
      const good = goodArguments(id);
      const [one, other] = [names.indexOf(first), names.indexOf(second)];
      const filled = (position: number, [rows, columns]: readonly [number, number]) => {
        const value = (good[position] as unknown[][])[0]?.[0];
        return Array.from({ length: rows }, () => Array.from({ length: columns }, () => value));
      };
      for (const a of shapes) {
        for (const b of shapes.filter(([rows, columns]) => rows * columns > 1)) {
          const given = [...good];
          given[one] = filled(one, a);
          given[other] = filled(other, b);
          const seen = entry && outcome(entry, given);
          const said = seen && "message" in seen ? seen.message : "";
          const isAlike = a[0] === b[0] && a[1] === b[1];
          const areLines = Math.min(...a) === 1 && Math.min(...b) === 1;
          const refusal = new RegExp(
            `^(${first} and ${second}|${second} and ${first}) must be ranges`,
          );
          expect(refusal.test(said), `${a.join(" by ")} beside ${b.join(" by ")}: ${said}`).toBe(
            !isAlike && !areLines,
          );
        }
      }
    },
  );

  it("serve all rows of a record where they are one mass", () => {
    const titres = [
      [2.4, 2.5],
      [3, 3.1],
    ];
    const leftOut = call("USUALSCATTER", titres);
    expect(leftOut).toHaveProperty("value");
    expect(call("USUALSCATTER", titres, null, [[7]])).toEqual(leftOut);
    expect(call("USUALSCATTER", titres, null, [[7], [6.9]])).toEqual(leftOut);
  });
});
