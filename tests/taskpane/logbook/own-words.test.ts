/** Words of a logbook's own: asked about once, answered in the pane, never guessed. */
import { describe, expect, it } from "vitest";
import type { Action } from "../../../src/taskpane/logbook/state";
import { questionsOf } from "../../../src/adopt/recognising/questions";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { uncheckedWords } from "../../../src/adopt/recheck/reporting/unchecked";
import { Pane, sheetOf } from "./typed-pane";

const round = (value: number, places = 0): number => Number(value.toFixed(places));

interface Row {
  readonly day: number | "";
  readonly titre: number;
  /** What is written, and what was subtracted. */
  readonly blank: LogbookValue;
  readonly subtracted: number;
  readonly amount: LogbookValue;
  readonly unit: LogbookValue;
  readonly litres: number;
}

const usual: Row = {
  day: 46_000,
  titre: 4.2,
  blank: 0.2,
  subtracted: 0.2,
  amount: 120,
  unit: "L",
  litres: 120,
};

/** 0.1 mol/L KOH, 10 g of oil, 7 g/L of pure KOH, 90 %: in doubles, molar mass 56.1053. */
function cellsOf({ day, titre, blank, subtracted, amount, unit, litres }: Row): LogbookValue[] {
  const value = (56.1 * 0.1 * (titre - subtracted)) / 10;
  const acid = ((litres * 0.915 * value) / 56.1) * 56.1053;
  const dose = (acid + litres * 7) / 0.9;
  return [day, "SW", titre, blank, 10, round(value, 2), amount, unit, round(dose)];
}

const headings = [
  "Date",
  "Lot",
  "Titre ml",
  "Blank",
  "Sample g",
  "AV",
  "Oil in",
  "unit",
  "KOH total",
];

function paneOf(rows: readonly Row[]): Pane {
  const cells = sheetOf([headings, ...rows.map(cellsOf)], ["yyyy-mm-dd"]);
  return new Pane(cells).act(
    { do: "typed", figure: "strength", value: "0.1", unit: "mol/L" },
    { do: "constant", role: "base", value: "KOH" },
    { do: "typed", figure: "assay", value: "90" },
    { do: "typed", figure: "charge", value: "7", unit: "g/L", basis: "pure" },
  );
}

const asked = ({ mapping, cells }: Pane) => questionsOf(mapping, cells).asked;
const litresOf = (word: string, litres: string): Action => ({
  do: "answer",
  answer: { ask: "unit", word, litres },
});
const found = (pane: Pane) => {
  const { findings, rows, figures, unchecked } = pane.recheck();
  return { findings, rows, figures, unchecked: unchecked.map(uncheckedWords) };
};

describe("a unit that is a word of the logbook's own", () => {
  const drum: Row = { ...usual, amount: 2, unit: "drum", litres: 416 };
  const rows = [
    usual,
    drum,
    { ...usual, amount: 30, unit: "imp gal", litres: 30 * 4.54609 },
    { ...drum, unit: "Drums" },
    { ...usual, amount: 1, unit: "IBC", litres: 1000 },
    { ...usual, amount: 200, unit: "kg", litres: 200 / 0.915 },
  ];

  it("is asked about once for each word, and leaves the other rows alone", () => {
    const pane = paneOf(rows);
    expect(asked(pane)).toEqual([
      { ask: "unit", word: "drum", rows: [2, 4] },
      { ask: "unit", word: "IBC", rows: [5] },
    ]);
    expect(found(pane)).toEqual({
      findings: [],
      rows: 6,
      figures: 9,
      unchecked: [
        'Not checked: how much one "drum" of oil is, is not said (row 3).',
        'Not checked: how much one "Drums" of oil is, is not said (row 5).',
        'Not checked: how much one "IBC" of oil is, is not said (row 6).',
      ],
    });
  });

  it("is used as it was answered", () => {
    const pane = paneOf(rows).act(litresOf("drum", "208"), litresOf("IBC", "1000"));
    expect(found(pane)).toEqual({ findings: [], rows: 6, figures: 12, unchecked: [] });
    const wrong = paneOf(rows).act(litresOf("drum", "200"));
    expect(wrong.recheck().findings.map(({ address }) => address)).toEqual(["I3", "I5"]);
  });

  it("may stand beside the figure, and a unit that is none of the column's is its own", () => {
    const pane = paneOf([
      { ...drum, amount: "2 drums", unit: "" },
      { ...usual, amount: "120 L", unit: "" },
    ]);
    expect(asked(pane)).toEqual([{ ask: "unit", word: "drums", rows: [1] }]);
    pane.act(litresOf("drums", "208"));
    expect(found(pane)).toMatchObject({ findings: [], figures: 4, unchecked: [] });
  });

  it("is asked about where a row has none at all", () => {
    const pane = paneOf([usual, { ...usual, unit: "", amount: 50, litres: 50 * 3.785411784 }]);
    expect(asked(pane)).toEqual([{ ask: "unit", word: "", rows: [2] }]);
    expect(found(pane)).toMatchObject({ findings: [], figures: 3 });
    pane.act(litresOf("", "3.785411784"));
    expect(found(pane)).toMatchObject({ findings: [], figures: 4, unchecked: [] });
  });

  it('is not read out of a longer word: "200 L drum" is no litre', () => {
    const pane = paneOf([{ ...usual, amount: 2, unit: "200 L drum", litres: 400 }]);
    expect(asked(pane)).toHaveLength(1);
    expect(found(pane).findings).toEqual([]);
  });
});

describe("an amount in no named unit", () => {
  const rows = [usual, { ...usual, titre: 5 }].map(cellsOf);
  const without = [headings, ...rows].map((row) => row.filter((_, at) => at !== 7));
  const pane = () =>
    new Pane(sheetOf(without, ["yyyy-mm-dd"])).act(
      { do: "typed", figure: "strength", value: "0.1", unit: "mol/L" },
      { do: "constant", role: "base", value: "KOH" },
      { do: "typed", figure: "assay", value: "90" },
      { do: "typed", figure: "charge", value: "7", unit: "g/L", basis: "pure" },
    );

  it("is not taken for litres: its doses are not checked before the unit is picked", () => {
    expect(found(pane())).toEqual({
      findings: [],
      rows: 2,
      figures: 2,
      unchecked: ["Not checked: the unit of the amount of oil is not said (rows 2 to 3)."],
    });
    const said = pane().act({ do: "column", column: 6, role: "oilAmount", unit: "L" });
    expect(found(said)).toEqual({ findings: [], rows: 2, figures: 4, unchecked: [] });
  });
});

describe("a blank that is not written in every row", () => {
  const rows: Row[] = [
    { ...usual, blank: 0.2 },
    { ...usual, blank: "", titre: 3.9 },
    { ...usual, day: 46_001, blank: 0.3, subtracted: 0.3 },
    { ...usual, day: 46_001, blank: "", subtracted: 0.3, titre: 5.1 },
    { ...usual, day: "", blank: "", subtracted: 0.3, titre: 5.4 },
  ];
  const means = (what: "day" | "above" | "none" | "unknown"): Action => ({
    do: "answer",
    answer: { ask: "blank", means: what },
  });

  it("is asked about once, and its rows are not checked before", () => {
    const pane = paneOf(rows);
    expect(asked(pane)).toEqual([{ ask: "blank", rows: [2, 4, 5], hasDays: true }]);
    expect(found(pane)).toEqual({
      findings: [],
      rows: 2,
      figures: 4,
      unchecked: [
        "Not checked: its blank is empty, and what that means is not said (rows 3 and 5 to 6).",
      ],
    });
  });

  it("is the blank of the day, also where the date stands once a day", () => {
    expect(found(paneOf(rows).act(means("day")))).toEqual({
      findings: [],
      rows: 5,
      figures: 10,
      unchecked: [],
    });
  });

  it("of the day is not that of the day before", () => {
    const next = { ...usual, day: 46_002, blank: "" };
    expect(found(paneOf([...rows, next]).act(means("day"))).unchecked).toEqual([
      "Not checked: no blank is written for that day (row 7).",
    ]);
    expect(
      found(paneOf([...rows, { ...next, subtracted: 0.3 }]).act(means("above"))),
    ).toMatchObject({ findings: [], rows: 6, unchecked: [] });
  });

  it("may be nothing to subtract", () => {
    const none = rows.map((row) => (row.blank === "" ? { ...row, subtracted: 0 } : row));
    expect(found(paneOf(none).act(means("none")))).toMatchObject({ findings: [], figures: 10 });
  });

  it("is found out when it was not subtracted after all", () => {
    const missed = rows.map((row) => (row.blank === "" ? { ...row, subtracted: 0 } : row));
    const report = paneOf(missed).act(means("day")).recheck();
    expect(new Set(report.findings.map(({ mistake, row }) => `${mistake} ${String(row)}`))).toEqual(
      new Set(["blank-not-subtracted 2", "blank-not-subtracted 4", "blank-not-subtracted 5"]),
    );
  });

  it("written with ditto marks is read as the one above, and the pane says so", () => {
    const dittos = rows.map((row) => (row.blank === "" ? { ...row, blank: "″" } : row));
    const pane = paneOf(dittos);
    expect(questionsOf(pane.mapping, pane.cells)).toEqual({ asked: [], hasDittos: true });
    expect(found(pane)).toEqual({ findings: [], rows: 5, figures: 10, unchecked: [] });
  });
});

describe("a word where a blank should stand", () => {
  const rows: Row[] = [
    { ...usual, blank: 0.2 },
    { ...usual, blank: "none", subtracted: 0, titre: 3.9 },
    { ...usual, blank: "None", subtracted: 0, titre: 5.1 },
    { ...usual, blank: "as before", subtracted: 0.2, titre: 5.4 },
  ];

  it("is asked about once, and its cell has one message; as before is a ditto mark", () => {
    // The mark after the word stands for the word: three rows wait for one answer.
    const [first, ...rest] = rows;
    const last = rest.pop();
    const pane = paneOf([first, last, ...rest].flatMap((each) => (each ? [each] : [])));
    expect(asked(pane)).toEqual([{ ask: "word", word: "none", rows: [3, 4], hasDays: true }]);
    expect(found(pane)).toEqual({
      findings: [],
      rows: 2,
      figures: 4,
      unchecked: [
        'Not checked: its blank says "none", and what that means is not said (row 4).',
        'Not checked: its blank says "None", and what that means is not said (row 5).',
      ],
    });
    const answer = { ask: "word", word: "none", means: "none" } as const;
    expect(found(pane.act({ do: "answer", answer }))).toEqual({
      findings: [],
      rows: 4,
      figures: 8,
      unchecked: [],
    });
  });
});
