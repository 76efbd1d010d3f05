/** Readings that stand as text: no new column is offered that would come out empty. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { offers, type Spelling } from "../../../src/adopt/added-columns/columns-to-add";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { bareLogbook } from "../recheck/bare-logbook";

const columns: readonly (readonly [RoleId, string | undefined])[] = [
  ["titre", "mL"],
  ["titre", "mL"],
  ["blank", "mL"],
  ["sampleMass", "g"],
  ["molarity", "mol/L"],
  ["oilAmount", "kg"],
  ["base", undefined],
  ["assay", "%"],
  ["baseCharge", "%"],
];
const row: readonly LogbookValue[] = [2.4, 2.5, 0.15, 10.02, 0.1, 183, "KOH", 90, 0.765];

const comma = (value: LogbookValue): LogbookValue =>
  typeof value === "number" ? value.toFixed(2).replace(".", ",") : value;

function logbook(isText: (column: number) => boolean) {
  const rows = [row, row, row].map((each) =>
    each.map((value, column) => (isText(column) ? comma(value) : value)),
  );
  const { mapping, cells } = bareLogbook(columns, rows);
  const pure = mapping.columns.map((each) =>
    each.role === "baseCharge" ? { ...each, basis: "pure" as const } : each,
  );
  return { mapping: { ...mapping, columns: pure, commas: "decimal" as const }, cells };
}

const given = (isText: (column: number) => boolean, spelling: Spelling) => {
  const { mapping, cells } = logbook(isText);
  return offers(mapping, cells, spelling);
};

const spelling = fc.constantFrom<Spelling>("functions", "plain");

describe("new columns over readings that are text", () => {
  it("are not offered, and say which column to turn into numbers", () => {
    const [corrected] = given((column) => column < 3, "functions");
    expect(corrected?.formula).toBeUndefined();
    expect(corrected?.lacks).toContain("A: titre; B: titre; C: blank");
    expect(corrected?.lacks).toContain('"2,40"');
  });

  it("are offered for no set of text columns that their formula reads, and as before for every other", () => {
    fc.assert(
      fc.property(fc.subarray([0, 1, 2, 3, 4, 5, 7, 8]), spelling, (texts, how) => {
        const letter = (column: number): string => String.fromCharCode(65 + column);
        const plain = given(() => false, how);
        given((column) => texts.includes(column), how).forEach((offer, at) => {
          const formula = plain[at]?.formula?.(2);
          if (formula === undefined) return;
          // The titres A and B are one range; every other column stands in the formula by its letter.
          const reads = texts.some((column) =>
            column < 2 ? formula.includes("A2:B2") : formula.includes(`${letter(column)}2`),
          );
          expect([offer.id, offer.formula?.(2)]).toEqual([offer.id, reads ? undefined : formula]);
        });
      }),
    );
  });

  it("take a lone text titre for a reading: its row is worked out, and is not left empty", () => {
    const { mapping, cells } = logbook(() => false);
    const values = cells.values.map((each, at) =>
      at === 3 ? ["2,40", "2,50", ...each.slice(2)] : each,
    );
    const [corrected] = offers(mapping, { ...cells, values }, "functions");
    expect(corrected?.formula?.(4)).toContain("COUNTA(A4:B4)=0");
  });
});
