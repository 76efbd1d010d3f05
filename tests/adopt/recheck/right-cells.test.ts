/** Right cells of a row speak against causes that would show in them. */
import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { bareLogbook, typedConstants } from "./bare-logbook";

type Constant = readonly ["assay" | "base" | "baseCharge" | "titrantBase", string, string?];

function recheck(
  columns: Parameters<typeof bareLogbook>[0],
  rows: readonly (readonly number[])[],
  constants: readonly Constant[],
) {
  const { mapping, cells } = bareLogbook(columns, rows);
  const said = typedConstants(constants);
  return recheckAtOnce([{ mapping: { ...mapping, constants: said }, cells }]).findings;
}

/** 850 kg, KOH of 88 %, 0.8 % of it pure for the reaction: 7727 g. */
const parts = (net: number) => {
  const acid = Math.round(((850 * net * 0.1012) / 5) * (56.1053 / 0.88));
  return { acid, reaction: 7727 };
};
const ofParts = (rows: readonly (readonly [net: number, off: number])[]) =>
  recheck(
    [
      ["titre", "mL"],
      ["blank", "mL"],
      ["correctedTitre", "mL"],
      ["sampleMass", "g"],
      ["molarity", "mol/L"],
      ["oilMass", "kg"],
      ["acidDose", "g"],
      ["reactionDose", "g"],
      ["catalyst", "g"],
    ],
    rows.map(([net, off]) => {
      const { acid, reaction } = parts(net);
      return [net + 0.1, 0.1, net, 5, 0.1012, 850, acid, reaction, acid + reaction + off];
    }),
    [
      ["assay", "88", "%"],
      ["base", "KOH"],
      ["baseCharge", "0.8", "%"],
    ],
  );

describe("a total that is not the sum of its right parts", () => {
  it("is a slip of addition, and no cause that a right part speaks against", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 15, max: 45 }).map((each) => each / 10),
        // More than conventions allow, less than a point that slipped.
        fc.integer({ min: 700, max: 1900 }),
        fc.boolean(),
        (net, size, isLess) => {
          const off = isLess ? -size : size;
          const { acid, reaction } = parts(net);
          const total = acid + reaction;
          // Without the assay, or without the acid, the total is another known mistake.
          const others = [total * 0.88, total * 0.88 * 0.88, reaction, total / 0.88];
          fc.pre(others.every((each) => Math.abs(total + off - each) > 0.03 * total));
          // Nor is it the total that stands above it.
          const above = parts(3.5).acid + reaction;
          fc.pre(Math.abs(total + off - above) > 2);
          const [found, ...more] = ofParts([
            [net, 0],
            [2.5, 0],
            [3.5, 0],
            [net, off],
          ]);
          expect(more).toEqual([]);
          expect([found?.row, found?.mistake, found?.also]).toEqual([
            4,
            "slip-of-addition",
            undefined,
          ]);
          expect(Math.abs((found?.effect?.grams ?? 0) - off)).toBeLessThan(0.006 * total);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("without its assay, or without the acid, is still called that", () => {
    const { acid, reaction } = parts(3);
    expect(ofParts([[3, -Math.round((acid + reaction) * 0.12)]])[0]?.mistake).toBe(
      "assay-not-applied",
    );
    expect(ofParts([[3, -acid]])[0]?.mistake).toBe("acid-left-out");
  });
});

describe("a net titre that is right", () => {
  it("speaks against a blank that was not subtracted", () => {
    // 1 g/L of NaOH on 1 mL of oil: net 2.7 and 7 for 5.5 g/L.
    const rows = [
      [2.5, 0.3, 2.2, 7.7],
      [3.2, 0.3, 2.9, 8.4],
      [1.8, 0.2, 1.6, 7.1],
      [2.4, 0.2, 2.2, 7.7],
      [3, 0.3, 2.7, 9.7],
    ];
    const found = recheck(
      [
        ["titre", "mL"],
        ["blank", "mL"],
        ["correctedTitre", "mL"],
        ["catalystRate", "g/L"],
        ["sampleVolume", "mL"],
        ["strength", "g/L"],
        ["oilAmount", "L"],
      ],
      rows.map((row) => [...row, 1, 1, 100]),
      [
        ["assay", "100", "%"],
        ["base", "NaOH"],
        ["titrantBase", "NaOH"],
        ["baseCharge", "5.5", "g/L"],
      ],
    );
    expect(found.map(({ row, should }) => [row, should])).toEqual([[5, "8.20"]]);
    const [{ mistake, also } = { mistake: undefined, also: undefined }] = found;
    expect([mistake, also]).not.toContain("blank-not-subtracted");
  });
});
