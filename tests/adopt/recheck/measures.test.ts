/**
 * One titration and one batch, written in drops, grains, fluid ounces and cups: whatever a maker counts in,
 * the acid value and the dose are the same. The factors are typed here from the laws that define them.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withAnswer } from "../../../src/adopt/recognising/answers";
import { lacks } from "../../../src/adopt/recognising/lacks";
import {
  type LogbookMapping,
  mappingFrom,
  withConstant,
} from "../../../src/adopt/recognising/mapping";
import { withBasis } from "../../../src/adopt/recognising/basis";
import { openQuestions, questionsOf } from "../../../src/adopt/recognising/questions";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import type { SizeUnit } from "../../../src/adopt/recognising/shape";
import { sheetOf } from "../recognising/sheet-of";

interface Way {
  /** As a maker heads it. */
  readonly heading: string;
  /** mL, g or L in one. */
  readonly one: number;
  /** What is asked of it. */
  readonly size?: readonly [word: string, unit: SizeUnit];
}

// Titres: mL, or drops of a size that is each maker's own.
const titres: readonly Way[] = [
  { heading: "Titre mL", one: 1 },
  { heading: "Titre (ml)", one: 1 },
  { heading: "Titre (drops)", one: 0.05, size: ["drop", "mL"] },
  { heading: "Drops of titrant", one: 0.04, size: ["drop", "mL"] },
  { heading: "Titre, drops", one: 0.0333, size: ["drop", "mL"] },
];
// 1 lb = 453.59237 g is 16 oz and 7000 grains.
const samples: readonly Way[] = [
  { heading: "Sample g", one: 1 },
  { heading: "Sample mass (grains)", one: 0.06479891 },
  { heading: "Oil sample oz", one: 28.349523125 },
];
// 231 cubic inches are 128 fl oz; 4.54609 L are 160.
const oils: readonly Way[] = [
  { heading: "Oil litres", one: 1 },
  { heading: "Oil (US gal)", one: 3.785411784 },
  { heading: "Oil (imp gal)", one: 4.54609 },
  { heading: "Oil (US fl oz)", one: 0.0295735295625 },
  { heading: "Oil (US quarts)", one: 0.946352946 },
  { heading: "Oil (imp. pints)", one: 0.56826125 },
  { heading: "Oil (cubes)", one: 18, size: ["cubes", "L"] },
  { heading: "Oil (drums)", one: 205, size: ["drums", "L"] },
  { heading: "Oil (cups)", one: 0.25, size: ["cup", "L"] },
];
const lyes: readonly Way[] = [
  { heading: "KOH total g", one: 1 },
  { heading: "KOH total oz", one: 28.349523125 },
  { heading: "KOH total lb", one: 453.59237 },
  { heading: "KOH total (grains)", one: 0.06479891 },
  { heading: "KOH total (cups)", one: 190, size: ["cup", "g"] },
];
const blanks: readonly Way[] = [
  { heading: "Blank mL", one: 1 },
  { heading: "Blank (drops)", one: 0.05, size: ["drop", "mL"] },
];
// Of KOH one mole has one mole of base: N is mol/L; 1 g in 100 mL is 10 g in a litre.
const strengths: readonly (readonly [heading: string, value: number, molar: number])[] = [
  ["KOH (N)", 0.1, 0.1],
  ["Titrant mol/L", 0.1, 0.1],
  ["Titrant strength (g/100 mL)", 0.5, 5 / 56.1053],
  ["Titrant % w/v", 0.5, 5 / 56.1053],
  ["Titrant g/L", 5, 5 / 56.1053],
];

const ways = fc.record({
  titre: fc.constantFrom(...titres),
  blank: fc.constantFrom(...blanks),
  sample: fc.constantFrom(...samples),
  oil: fc.constantFrom(...oils),
  lye: fc.constantFrom(...lyes),
  strength: fc.constantFrom(...strengths),
});
type Ways = typeof ways extends fc.Arbitrary<infer T> ? T : never;

/** One book, one drop: what was answered of its drops holds for titre and blank alike. */
const isOneDrop = ({ titre, blank }: Ways): boolean =>
  !titre.size || !blank.size || titre.one === blank.one;

interface Row {
  readonly titre: number;
  readonly sample: number;
  readonly litres: number;
}
const blankTaken = 0.2;
const kohMass = 56.1053;

/** By hand, in plain doubles: mg KOH/g, and g of KOH of 90 % for 7 g/L of pure base and the acid. */
function byHand({ titre, sample, litres }: Row, molar: number) {
  const acidValue = (56.1053 * molar * (titre - blankTaken)) / sample;
  const lye = ((litres * 0.915 * acidValue) / 56.1053) * kohMass + litres * 7;
  return { acidValue, lye: lye / 0.9 };
}

function understood(values: readonly (readonly LogbookValue[])[], given: Ways) {
  const cells = sheetOf(values);
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no table was found");
  const sized = Object.values(given).flatMap((way) => ("size" in way && way.size ? [way] : []));
  const typed = (
    [
      ["titrantBase", "KOH", undefined],
      ["base", "KOH", undefined],
      ["assay", "90", "%"],
      ["baseCharge", "7", "g/L"],
    ] as const
  ).reduce<LogbookMapping>(
    (so, [role, value, unit]) => withConstant(so, role, value, unit),
    mappingFrom(guess),
  );
  const pure = withBasis(withBasis(typed, "baseCharge", "pure"), "strength", "pure");
  const mapping = sized.reduce<LogbookMapping>((so, { one, size }) => {
    if (!size) return so;
    const [word, unit] = size;
    const isUnit = word === "cup" || word === "drop";
    return withAnswer(
      so,
      isUnit
        ? { ask: "size", word, in: unit, size: String(one) }
        : { ask: "unit", word, litres: String(one) },
    );
  }, pure);
  return { cells, mapping, before: typed };
}

const digits = (value: number): number => Number(value.toPrecision(9));

function writtenIn(rows: readonly Row[], given: Ways, wrong = 1) {
  const { titre, blank, sample, oil, lye, strength } = given;
  const head = [
    "Batch",
    titre.heading,
    blank.heading,
    sample.heading,
    strength[0],
    "Acid value",
    oil.heading,
    lye.heading,
  ];
  return [
    head,
    ...rows.map((row, at): LogbookValue[] => {
      const right = byHand(row, strength[2]);
      return [
        `B${String(at + 1)}`,
        digits(row.titre / titre.one),
        digits(blankTaken / blank.one),
        digits(row.sample / sample.one),
        strength[1],
        digits(right.acidValue * wrong),
        digits(row.litres / oil.one),
        digits(right.lye / lye.one),
      ];
    }),
  ];
}

const rows = fc.array(
  fc.record({
    titre: fc.integer({ min: 50, max: 400 }).map((each) => each / 100),
    sample: fc.integer({ min: 800, max: 1200 }).map((each) => each / 100),
    litres: fc.integer({ min: 90, max: 400 }),
  }),
  { minLength: 5, maxLength: 8 },
);

describe("a titration and a batch in any measure", () => {
  it("are worked out to the same acid value and dose, and nothing is asked beside the sizes", () => {
    fc.assert(
      fc.property(rows, ways.filter(isOneDrop), (written, given) => {
        const { cells, mapping, before } = understood(writtenIn(written, given), given);
        const sizes = questionsOf(before, cells).asked.length;
        const asked = new Set(
          Object.values(given).flatMap((way) =>
            "size" in way && way.size ? [way.size.join(" ")] : [],
          ),
        );
        expect(sizes).toBe(asked.size);
        expect(openQuestions(mapping, cells)).toBe(0);
        const report = recheckAtOnce([{ mapping, cells }]);
        expect(report.unchecked).toEqual([]);
        expect(report.findings).toEqual([]);
        expect(report.checked).toMatchObject({
          "acid value": written.length,
          dose: written.length,
        });
      }),
      { numRuns: 60 },
    );
  });

  it("of which nobody said how large a drop is are not checked, and the row says why", () => {
    const given: Ways = {
      titre: titres[2] as Way,
      blank: blanks[0] as Way,
      sample: samples[0] as Way,
      oil: oils[0] as Way,
      lye: lyes[0] as Way,
      strength: strengths[0] as (typeof strengths)[number],
    };
    const written = [1, 2, 3, 4, 5].map((each) => ({ titre: each, sample: 10, litres: 100 }));
    const { cells, before } = understood(writtenIn(written, given), given);
    const report = recheckAtOnce([{ mapping: before, cells }]);
    expect(report.findings).toEqual([]);
    expect(report.unchecked.map(({ why }) => why)).toContain(
      "how large one drop of Titre (drops) is, is not said",
    );
  });
});

describe("a wrong figure beside measures", () => {
  // 48 drops of 0.05 mL are 2.4 mL; less 0.2 mL, 0.1 mol/L and 154.324 grains (10 g): 56.1053 x 0.1 x 2.2 / 10 = 1.2343
  it("is told with the right one, worked out by hand: 48 drops are an acid value of 1.234", () => {
    const given: Ways = {
      titre: titres[2] as Way,
      blank: blanks[0] as Way,
      sample: samples[1] as Way,
      oil: oils[3] as Way,
      lye: lyes[4] as Way,
      strength: strengths[0] as (typeof strengths)[number],
    };
    const written = [2.4, 2.4, 2.4, 2.4, 2.4].map((titre) => ({ titre, sample: 10, litres: 100 }));
    const sheet = writtenIn(written, given).map((row) => [...row]);
    (sheet[3] as LogbookValue[])[5] = 1.9;
    const { cells, mapping } = understood(sheet, given);
    const [finding] = recheckAtOnce([{ mapping, cells }]).findings;
    expect(finding).toMatchObject({ address: "F4", role: "acidValue" });
    expect(Number(finding?.should)).toBeCloseTo(1.234, 2);
  });
});

describe("a word for two measures", () => {
  const book = (first: string, second: string) => {
    const values = [
      ["Batch", first, second, "Acid value", "KOH g"],
      ...[1, 2, 3, 4].map((each) => [
        `B${String(each)}`,
        20 + 3.5 * each,
        4 + each,
        2 + each / 10,
        500,
      ]),
    ];
    const same = (text: string) => values.map((row) => row.map(() => text));
    const cells = {
      sheet: "Log",
      row: 0,
      column: 0,
      values,
      formulas: same(""),
      formats: same("General"),
    };
    const [guess] = recogniseSheet(cells);
    if (!guess) throw new Error("no table was found");
    return lacks(mappingFrom(guess), cells).map(({ sentence }) => sentence);
  };

  it("is asked about where the book names no nation, and taken for the one it names elsewhere", () => {
    const asked = book("Oil gal", "Methanol gal");
    expect(asked).toContain("Which gallons are B: Oil gal and C: Methanol gal in: US or imperial?");
    expect(book("Oil gal", "Methanol US gal").join(" ")).not.toContain("Which gallon");
    expect(book("Oil fl oz", "Methanol litres")).toContain(
      "Which fluid ounce is B: Oil fl oz in: US or imperial?",
    );
  });
});
