/** Bench records for tests: one of the demo co-operative, and any that the pane could hand over. */
import fc from "fast-check";
import { exact } from "../../../src/core/exact/exact";
import type { TitrationRecord } from "../../../src/workbook/record/titration-record";

/** 4 May 2026: 126 years of 365 days, 31 leap days (and 29 February 1900, which was none), 123 days. */
export const fourthOfMay2026 = 46146;

export const fryerLot: TitrationRecord = {
  date: fourthOfMay2026,
  lot: "F-207",
  stage: "as received",
  oil: "used cooking oil",
  operator: "Ines",
  titrantBase: "KOH",
  molarity: exact("0.1"),
  strengthSetBy: "KHP",
  indicator: "phenolphthalein",
  secondsHeld: 15,
  titres: [exact("2.4"), null, exact("2.45"), exact("2.4")],
  blanks: [exact("0.1"), exact("0.15")],
  masses: exact("5.02"),
  titreStep: exact("0.05"),
  massStep: exact("0.01"),
  isByVolume: false,
  titrantPercent: exact("0.5"),
  burettePercent: undefined,
  usual: undefined,
  omitted: [{ number: 2, titre: exact("2.9"), reason: "bubble" }],
  note: "",
};

/** Texts that a spreadsheet would like to make something else of. */
export const awkwardTexts = [
  "=1+1",
  "+1",
  "-x",
  "@x",
  "'quoted",
  "<b>bold</b>",
  "007",
  "1-2",
  "3/4",
  "TRUE",
  "1e5",
  "#N/A",
  " =SUM(A1) ",
  "{=1}",
  "ünï ☂",
  "a\nb",
];

const text = fc.oneof(
  fc.constantFrom(...awkwardTexts),
  fc.string({ maxLength: 30 }),
  fc.string({ maxLength: 10 }).map((rest) => `=${rest}`),
);

const figure = (least: number, most: number, places: number) =>
  fc
    .integer({ min: least * 10 ** places, max: most * 10 ** places })
    .map((steps) => exact((steps / 10 ** places).toFixed(places)));

const orNull = <T>(value: fc.Arbitrary<T>) => fc.oneof(value, fc.constant(null));
const orNothing = <T>(value: fc.Arbitrary<T>) => fc.oneof(value, fc.constant(undefined));

export const anyRecord: fc.Arbitrary<TitrationRecord> = fc.record({
  date: fc.integer({ min: 1, max: 60_000 }),
  lot: text.filter((lot) => lot !== ""),
  stage: fc.constantFrom("as received", "dried", "after acid step", "blend"),
  oil: text,
  operator: text,
  titrantBase: fc.constantFrom("KOH", "NaOH", "KOCH3", "NaOCH3"),
  molarity: figure(0.01, 1, 4),
  strengthSetBy: text,
  indicator: text,
  secondsHeld: orNothing(fc.constantFrom(15, 30)),
  titres: fc.array(orNull(figure(1, 40, 2)), { minLength: 1, maxLength: 6 }),
  blanks: fc.oneof(
    fc.constant("neutralised" as const),
    fc.array(figure(0.05, 0.5, 2), { minLength: 1, maxLength: 3 }),
  ),
  masses: fc.oneof(
    figure(0.5, 20, 3),
    fc.array(orNull(figure(0.5, 20, 3)), { minLength: 1, maxLength: 6 }),
  ),
  titreStep: orNothing(figure(0.01, 0.1, 2)),
  massStep: orNothing(figure(0.01, 0.1, 2)),
  isByVolume: fc.boolean(),
  titrantPercent: orNothing(figure(0.1, 5, 1)),
  burettePercent: orNothing(figure(0.1, 5, 1)),
  usual: orNothing(
    fc.record({
      scatter: figure(0.01, 0.2, 4).map(Number),
      freedom: fc.integer({ min: 1, max: 1000 }),
    }),
  ),
  omitted: fc.array(
    fc.record({
      number: fc.integer({ min: 1, max: 6 }),
      titre: figure(1, 40, 2),
      reason: text,
    }),
    { maxLength: 2 },
  ),
  note: text,
});
