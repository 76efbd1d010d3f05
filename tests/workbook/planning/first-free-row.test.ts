/**
 * The law of a table of ours: from any state a person can bring it into, recording writes the inputs of
 * the first row that has none, in order, and leaves every row with its formulas and its readings.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Host } from "../../../src/sheet/port";
import type { MemoryBook } from "../../host/memory/book";
import type { Book } from "../../../src/sheet/book";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../../src/workbook/planning/plan";
import { planBatch, recordBatch } from "../../../src/workbook/planning/record/record-batch";
import {
  planTitration,
  recordTitration,
} from "../../../src/workbook/planning/record/record-titration";
import { planTitrant, recordTitrant } from "../../../src/workbook/planning/record/record-titrant";
import type { RowChoice } from "../../../src/workbook/planning/record/target-row";
import type { TitrantRecord } from "../../../src/workbook/record/titrant-record";
import { batchesAlone } from "../../../src/workbook/tables/batches";
import type { TableShape } from "../../../src/workbook/tables/column";
import { rowValues } from "../../../src/workbook/tables/row-values";
import { titrants } from "../../../src/workbook/tables/titrants";
import { titrations } from "../../../src/workbook/tables/titrations";
import { openMemory } from "../../host/open-memory";
import { times } from "../../thorough";
import { only, slipwayBatch } from "../record/batch-records";
import { anyRecord } from "../record/records";

/** What a person has done to a row of the table. */
type Row =
  | "as it was"
  /** The yellow cells were emptied. */
  | "emptied"
  /** Everything in it was emptied. */
  | "wiped"
  /** Filled in, and its results emptied. */
  | "no results"
  /** One yellow cell is filled in. */
  | { readonly only: number };

/** Below the table, typed where the table did not grow. */
type Below = "blank" | "typed" | { readonly only: number };

const anyRow: fc.Arbitrary<Row> = fc.oneof(
  { weight: 3, arbitrary: fc.constant<Row>("as it was") },
  { weight: 2, arbitrary: fc.constant<Row>("emptied") },
  { weight: 1, arbitrary: fc.constant<Row>("wiped") },
  { weight: 1, arbitrary: fc.constant<Row>("no results") },
  { weight: 2, arbitrary: fc.record({ only: fc.nat(60) }) },
);
const anyBelow: fc.Arbitrary<Below> = fc.oneof(
  fc.constant<Below>("blank"),
  fc.constant<Below>("typed"),
  fc.record({ only: fc.nat(60) }),
);
const anyState = fc.record({
  rows: fc.array(anyRow, { minLength: 1, maxLength: 6 }),
  below: fc.array(anyBelow, { maxLength: 3 }),
});

const inputsOf = ({ columns }: TableShape): number[] =>
  columns.flatMap(({ formula }, column) => (formula === undefined ? [column] : []));

function bookOf(shape: TableShape, rows: readonly Row[], below: readonly Below[]): Book {
  const inputs = inputsOf(shape);
  const cellsOf = (row: Row | Below, at: number) => {
    const only = typeof row === "object" ? inputs[row.only % inputs.length] : undefined;
    const isFull = row === "as it was" || row === "no results" || row === "typed";
    const hasResults = row === "as it was" || row === "emptied" || typeof row === "object";
    return shape.columns.map(({ formula }, column) => {
      if (formula !== undefined) return hasResults && at < rows.length ? { formula } : null;
      return isFull || column === only ? { value: `r${String(at)} c${String(column)}` } : null;
    });
  };
  return {
    name: "a logbook",
    sheets: [
      {
        name: "Lab log",
        rows: [
          shape.columns.map(({ heading }) => ({ value: heading })),
          ...[...rows, ...below].map(cellsOf),
        ],
        columnWidths: [],
        tables: [
          {
            name: shape.name,
            row: 0,
            column: 0,
            rows: rows.length + 1,
            columns: shape.columns.length,
          },
        ],
        frozenRows: 0,
      },
    ],
  };
}

/** By hand: the first row without any input; else the first blank one below. From 1. */
function wantedRow(rows: readonly Row[], below: readonly Below[]): number {
  const inside = rows.findIndex((row) => row === "emptied" || row === "wiped");
  if (inside >= 0) return inside + 1;
  const blank = below.indexOf("blank");
  return rows.length + 1 + (blank >= 0 ? blank : below.length);
}

interface Kind<Of> {
  readonly shape: TableShape<Of>;
  readonly records: fc.Arbitrary<Of>;
  readonly plan: (host: Host, record: Of, choice?: RowChoice) => Promise<Plan | Refusal>;
  readonly record: (
    host: Host,
    record: Of,
    confirmed: Confirmed | undefined,
    pause: undefined,
    choice: RowChoice,
  ) => Promise<RecordOutcome>;
}

const held = ({ sheets }: MemoryBook, row: number, column: number): unknown[] => {
  const cell = sheets[0]?.cells[`${String(row)},${String(column)}`];
  return [cell?.value ?? "", cell?.formula ?? ""];
};

function law<Of>({ shape, records, plan, record }: Kind<Of>): void {
  it("writes the first row without inputs, in order, and every row keeps or gets its formulas", () =>
    fc.assert(
      fc.asyncProperty(records, anyState, async (given, { rows, below }) => {
        const host = openMemory(bookOf(shape, rows, below));
        const before = host.book;
        const wanted = wantedRow(rows, below);
        const first = await plan(host, given);
        const isOccupied = wanted > rows.length + 1;
        expect(first.kind).toBe(isOccupied ? "refused" : "plan");
        if (first.kind === "refused") expect(first.hasNextFree).toBe(true);
        const choice = isOccupied ? "next free" : "first";
        const planned = await plan(host, given, choice);
        if (planned.kind !== "plan") throw new Error(planned.sentence);
        const { fingerprint, mustConfirm: agreed } = planned;
        const outcome = await record(host, given, { fingerprint, agreed }, undefined, choice);
        expect(outcome).toMatchObject({ kind: "recorded", differences: [] });

        const after = host.book;
        const last = Math.max(rows.length, wanted);
        expect(after.tables[0]?.block.rows).toBe(last + 1);
        for (let row = 1; row <= rows.length + below.length + 2; row += 1) {
          const should = shape.columns.map(({ heading, formula }, column) => {
            if (formula !== undefined) return ["", row <= last ? formula : ""];
            if (row !== wanted) return held(before, row, column);
            return [
              rowValues(shape, given).find((each) => each.heading === heading)?.value ?? "",
              "",
            ];
          });
          expect(shape.columns.map((_, column) => held(after, row, column))).toEqual(should);
        }
        host.undo();
        expect(host.book).toEqual(before);
      }),
      { numRuns: times(12) },
    ));
}

describe("recording a titration in any state of the table", () => {
  law({
    shape: titrations,
    records: anyRecord,
    plan: planTitration,
    record: recordTitration,
  });
});

describe("recording a batch in any state of the table", () => {
  law({
    // what a workbook without the table Blends has
    shape: batchesAlone,
    records: fc
      .record({
        batch: fc.constantFrom("", "B-1", "=1+1"),
        lots: fc.constantFrom("SW-17", 12, "nowhere").map(only),
        water: fc.constantFrom(undefined, slipwayBatch.ratio),
        note: fc.string(),
      })
      .map((some) => ({ ...slipwayBatch, ...some })),
    plan: planBatch,
    record: recordBatch,
  });
});

describe("recording a titrant in any state of the table", () => {
  law({
    shape: titrants,
    records: fc.record({
      date: fc.constant(46_300),
      titrant: fc.constantFrom("K-5", "=1+1"),
      base: fc.constantFrom("KOH", "NaOH"),
      howKnown: fc.constantFrom("", "KHP"),
      stated: fc.constantFrom(undefined, slipwayBatch.charge),
      statedPercent: fc.constantFrom(undefined, slipwayBatch.charge),
      phthalate: fc.constantFrom([], [{ mass: slipwayBatch.charge, titre: slipwayBatch.ratio }]),
      blank: fc.constantFrom(undefined, "neutralised"),
      purity: fc.constant(undefined),
      massStep: fc.constant(undefined),
      titreStep: fc.constantFrom(undefined, slipwayBatch.charge),
      note: fc.string(),
    }) as fc.Arbitrary<TitrantRecord>,
    plan: planTitrant,
    record: recordTitrant,
  });
});
