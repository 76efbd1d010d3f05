/** What holds for every what-if table, wherever it goes. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MemoryBook } from "../../host/memory/book";
import type { Book } from "../../../src/sheet/book";
import {
  planWhatIf,
  type WhatIfAsked,
  writeWhatIf,
} from "../../../src/workbook/planning/what-if/plan-what-if";
import { openMemory } from "../../host/open-memory";
import { doses, question } from "../what-if/questions";

const filledCell = fc.record({
  row: fc.nat(30),
  column: fc.nat(8),
  value: fc.constantFrom("=1+1", "note", "7"),
});

const bookWith = (cells: readonly { row: number; column: number; value: string }[]): Book => ({
  name: "test",
  sheets: [
    {
      name: "Sheet1",
      rows: Array.from({ length: 31 }, (_, row) =>
        Array.from({ length: 9 }, (__, column) => {
          const found = cells.find((each) => each.row === row && each.column === column);
          return found ? { value: found.value } : null;
        }),
      ),
      columnWidths: [],
      tables: [],
      frozenRows: 0,
    },
  ],
});

const asked = fc
  .record({
    sizes: fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 5 }),
    acids: fc.array(fc.constantFrom(0.5, 2, 5, 20), { minLength: 1, maxLength: 4 }),
    by: fc.constantFrom("acid", "base", "assay", "charge"),
    row: fc.nat(12),
    column: fc.nat(4),
    isNew: fc.boolean(),
    form: fc.constantFrom("table", "one-formula"),
  })
  .map(({ sizes, acids, by, row, column, isNew, form }): WhatIfAsked => {
    const made = question({ sizes, by, columns: acids.map((acid) => ({ acid })) });
    return {
      question: made,
      doses: doses(made),
      form,
      place: isNew ? { kind: "new-sheet" } : { kind: "cell", sheet: "Sheet1", row, column },
    };
  });

/** What each filled cell of the first sheet holds, by place. */
const holding = (book: MemoryBook): Record<string, string> =>
  Object.fromEntries(
    Object.entries(book.sheets[0]?.cells ?? {})
      .map(([place, { value, formula }]) => [place, formula === "" ? String(value) : formula])
      .filter(([, held]) => held !== ""),
  );

describe("every what-if table", () => {
  it("changes the cells it named and no other, loses nothing unconfirmed, and goes with one undo", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(filledCell, { maxLength: 12 }), asked, async (cells, asking) => {
        const host = openMemory(bookWith(cells));
        const before = host.book;
        const plan = await planWhatIf(host, asking);
        expect(host.book).toEqual(before);
        if (plan.kind === "refused") return;

        const lost = plan.cells.filter(({ now }) => now !== "").map(({ address }) => address);
        expect(plan.mustConfirm).toEqual(lost);
        const half = { fingerprint: plan.fingerprint, agreed: plan.mustConfirm.slice(1) };
        if (lost.length > 0) {
          expect(await writeWhatIf(host, asking, half)).toMatchObject({ kind: "to-confirm" });
          expect(host.book).toEqual(before);
        }
        const whole = { ...half, agreed: plan.mustConfirm };
        expect(await writeWhatIf(host, asking, whole)).toMatchObject({
          kind: "recorded",
          differences: [],
        });
        const named = new Set(
          plan.cells
            .filter(({ block }) => block.sheet === "Sheet1")
            .map(({ block }) => `${block.row},${block.column}`),
        );
        const after = holding(host.book);
        for (const [place, held] of Object.entries(holding(before))) {
          if (!named.has(place)) expect(after[place]).toBe(held);
        }
        expect(Object.keys(after).every((at) => named.has(at) || at in holding(before))).toBe(true);
        host.undo();
        expect(host.book).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });
});
