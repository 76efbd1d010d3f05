/** What holds whatever is recorded, in whatever table of whoever's. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MemoryBook } from "../../host/memory/book";
import type { Plan } from "../../../src/workbook/planning/plan";
import { recordTitration } from "../../../src/workbook/planning/record/record-titration";
import { openMemory } from "../../host/open-memory";
import { planned, plannedRow, recorded } from "../../host/contract-recording";
import { times } from "../../thorough";
import { anyRecord, awkwardTexts, fryerLot } from "../record/records";
import { type LogbookParts, logbookOf, ourFormula, ourHeadings, type Typed } from "./logbooks";

const someTyped: fc.Arbitrary<Typed> = fc.oneof(
  { weight: 3, arbitrary: fc.constant(null) },
  { weight: 2, arbitrary: fc.integer({ min: 1, max: 99 }) },
  { weight: 1, arbitrary: fc.constantFrom("note", "neutralised", "=1+1", "=A1&B1") },
);

/** Some of our headings and some of theirs, in any order. */
const anyHeadings = fc
  .tuple(
    fc.subarray(ourHeadings.filter((each) => each !== "Lot" && each !== "Titre 1 mL")),
    fc.subarray(["Ferry", "Tank", "Lot no", "Titre"]),
  )
  .chain(([ours, theirs]) => {
    const all = ["Lot", "Titre 1 mL", ...ours, ...theirs];
    return fc.shuffledSubarray(all, { minLength: all.length });
  });

const anyLogbook: fc.Arbitrary<LogbookParts> = anyHeadings.chain((headings) => {
  const row = fc.tuple(
    ...headings.map((each) =>
      ourFormula(each) ? fc.oneof(someTyped, fc.constant(ourFormula(each))) : someTyped,
    ),
  );
  return fc.record({
    headings: fc.constant(headings),
    rows: fc.array(row, { minLength: 1, maxLength: 4 }),
    below: fc.oneof(fc.constant([]), row),
  });
});

const runs = { numRuns: times(60) };

type Held = Record<string, string>;

/** Every cell that holds anything, by sheet and place. */
const held = ({ sheets }: MemoryBook): Held =>
  Object.fromEntries(
    sheets.flatMap(({ name, cells }) =>
      Object.entries(cells)
        .filter(([, { value, formula }]) => value !== "" || formula !== "")
        .map(([place, { value, formula }]) => [
          `${name}!${place}`,
          JSON.stringify([value, formula]),
        ]),
    ),
  );

const changed = (before: Held, after: Held): string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
    (place) => before[place] !== after[place],
  );

const places = (plan: Plan): string[] =>
  plan.cells
    .filter(({ content }) => content.kind !== "keep")
    .map(({ block }) => `${block.sheet}!${block.row},${block.column}`);

describe("recording any titration in any table", () => {
  it("changes no cell that the plan does not name, and none that held something typed", () =>
    fc.assert(
      fc.asyncProperty(anyRecord, anyLogbook, async (record, parts) => {
        const host = openMemory(logbookOf(parts));
        const before = held(host.book);
        const plan = await planned(host, record);
        await recorded(host, record);
        const touched = changed(before, held(host.book));
        expect(places(plan)).toEqual(expect.arrayContaining(touched));
        const lost = touched.filter((place) => before[place] !== undefined);
        // a formula that goes down a whole column gives way to a figure of the record's own row
        const typed = lost.filter(
          (place) => !before[place]?.includes('"="') && !before[place]?.includes('"=1+1"'),
        );
        expect(typed).toEqual([]);
      }),
      runs,
    ));

  it("reads back as it was written, and one undo takes all of it away", () =>
    fc.assert(
      fc.asyncProperty(anyRecord, anyLogbook, async (record, parts) => {
        const host = openMemory(logbookOf(parts));
        const before = host.book;
        const outcome = await recorded(host, record);
        expect(outcome).toMatchObject({ kind: "recorded", isReadBack: true, differences: [] });
        host.undo();
        expect(host.book).toEqual(before);
      }),
      runs,
    ));

  it("never writes a text as a formula: every formula is the column's own or ours", () =>
    fc.assert(
      fc.asyncProperty(
        anyRecord,
        fc.option(anyLogbook, { nil: undefined }),
        async (record, parts) => {
          const host = openMemory(parts && logbookOf(parts));
          const plan = await planned(host, record);
          for (const { content, heading } of plan.cells) {
            if (content.kind !== "formula") continue;
            const column = parts?.headings.indexOf(heading) ?? -1;
            const theirs = parts?.rows?.map((row) => row[column]) ?? [];
            const isTheirs = theirs.some((typed) => String(typed).startsWith("="));
            expect(isTheirs || content.formula === ourFormula(heading)).toBe(true);
          }
          await recorded(host, record);
          const { sheet, row } = plan.block;
          const cells = host.book.sheets.find(({ name }) => name === sheet)?.cells ?? {};
          for (const { content, block } of plan.cells) {
            if (content.kind !== "value" || typeof content.value !== "string") continue;
            const found = cells[`${row},${block.column}`];
            expect([found?.value ?? "", found?.formula ?? ""]).toEqual([content.value, ""]);
          }
        },
      ),
      runs,
    ));

  it("writes nothing without a yes to all that must be confirmed", () =>
    fc.assert(
      fc.asyncProperty(anyRecord, anyLogbook, async (record, parts) => {
        const host = openMemory(logbookOf(parts));
        const before = host.book;
        const { plan, choice } = await plannedRow(host, record);
        fc.pre(plan.mustConfirm.length > 0);
        for (const left of plan.mustConfirm) {
          const agreed = plan.mustConfirm.filter((each) => each !== left);
          const confirmed = { fingerprint: plan.fingerprint, agreed };
          const outcome = await recordTitration(host, record, confirmed, undefined, choice);
          expect(outcome.kind).toBe("to-confirm");
        }
        expect(host.book).toEqual(before);
      }),
      runs,
    ));

  it("shows each awkward text as it is, not as what it looks like", async () => {
    for (const lot of awkwardTexts) {
      const plan = await planned(openMemory(), { ...fryerLot, lot });
      expect(plan.cells.find(({ heading }) => heading === "Lot")?.shown).toBe(lot);
    }
  });
});
