/** Titrations as a maker would type them, good and bad: what the pane says to each, and what its row says. */
import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { verdictWords } from "../../../src/core/replicates/verdict-words";
import { recordOf } from "../../../src/taskpane/titrate/record";
import { type View, viewOf } from "../../../src/taskpane/titrate/view-of";
import { worthOf } from "../../../src/taskpane/titrate/worth";
import { worthText } from "../../../src/workbook/record/worth";
import { recorded } from "../../host/contract-recording";
import { openMemory } from "../../host/open-memory";
import { but, draftOf, type Slip, today } from "./slip";

const mL = (value: number) => quantity("mL", value);

/** Five titrations of three titres with a scatter of 0.05 mL: ten degrees of freedom. */
const record = {
  hasUsual: true,
  rows: [1, 2, 3, 4, 5].map((place) => ({
    titres: [place, place + 0.05, place + 0.1].map(mL),
    blanks: [],
    samples: undefined,
    day: 46000,
    lot: "SW-1",
    molarity: quantity("mol/L", 0.1),
    titreStep: mL(0.05),
  })),
};

const byRecord = { picked: { record: "use" } } as const;

interface Typed {
  readonly slip: Slip;
  /** The first sentence of the verdict, as it is read aloud. */
  readonly said: string;
  readonly worth: "Good" | "Usable" | "Not yet";
  readonly also?: string;
}

const typed: Readonly<Record<string, Typed>> = {
  "three that agree": {
    slip: { titres: ["2.40", "2.45", "2.45"] },
    said: "The three agree within 0.05 mL: use 2.433 mL.",
    worth: "Good",
  },
  "three that agree, the titrant's own doubt not typed": {
    slip: { titres: ["2.50", "2.50", "2.60"], typed: { strengthPercent: "" } },
    said: "The three agree within 0.10 mL: use 2.533 mL.",
    worth: "Usable",
  },
  "one far out": {
    slip: { titres: ["2.30", "2.35", "4.00"] },
    said: "4.00 mL is 1.65 mL away from the two that agree.",
    worth: "Not yet",
  },
  "half a millilitre apart": {
    slip: { titres: ["2.30", "2.80"] },
    said: "The two lie 0.50 mL apart, and no one can say which is off: titrate again before any dose (up to 0.15 mL apart counts as agreement).",
    worth: "Not yet",
  },
  "a slip of the decimal point": {
    slip: { titres: ["1.55", "16.0", "1.60"] },
    said: "16.00 mL is about ten times the others: was it 1.60 mL?",
    worth: "Not yet",
  },
  "a single one, with a record": {
    slip: { titres: ["2.40"], ...byRecord },
    said: "One reading, 2.40 mL: nothing to compare it with.",
    worth: "Usable",
  },
  "a single one, without a record": {
    slip: { titres: ["2.85"] },
    said: "One reading, 2.85 mL: nothing to compare it with.",
    worth: "Not yet",
  },
  "two that agree": {
    slip: { titres: ["2.40", "2.45"] },
    said: "The two agree within 0.05 mL: use 2.425 mL.",
    // by hand: 12.706 x 0.03536 x sqrt(1/2 + 1) = 0.55 of 2.275 mL, which is 24 %
    worth: "Usable",
  },
  "two that are equal, in a neutralised solvent": {
    slip: { titres: ["2.40", "2.40"], blanks: [], picked: { blank: "neutralised" } },
    said: "Both readings are 2.40 mL: use it.",
    worth: "Good",
  },
  "a sample by syringe": {
    slip: {
      titres: ["3.40", "3.45", "3.40"],
      typed: { volume: "5", temperature: "25", samplePercent: "5", mass: "" },
      picked: { sample: "by volume", oil: "canola" },
    },
    said: "The three agree within 0.05 mL: use 3.417 mL.",
    worth: "Usable",
  },
  "three apart, by the record": {
    slip: { titres: ["2.40", "2.60", "2.80"], ...byRecord },
    said: "The three lie 0.40 mL apart, and no one can say which is off: titrate again before any dose (your usual scatter explains 0.117 mL from the mean).",
    worth: "Not yet",
    also: verdictWords.more,
  },
  "today scattered more than usual": {
    slip: { titres: ["2.40", "2.55", "2.35"], blanks: ["0.10", "0.25"], ...byRecord },
    said: "The three agree within 0.20 mL: use 2.433 mL.",
    worth: "Good",
    also: verdictWords.more,
  },
};

const seenOf = ({ slip }: Typed): View => viewOf(draftOf(but(slip)), ".", today, record);

const firstSentence = (words: string): string =>
  /^.*?(?:[.?](?= [A-Z])|[.?]$)/.exec(words)?.[0] ?? words;

const spoken = (one: Typed): string => {
  const { judgement, scattersMore } = seenOf(one).working;
  const said = firstSentence(judgement?.verdict ?? "");
  return scattersMore ? `${said} ${verdictWords.more}` : said;
};

describe.each(Object.entries(typed))("of titrations as they are typed, %s", (_, one) => {
  it("is told in plain words first", () => {
    expect(spoken(one)).toBe(one.also === undefined ? one.said : `${one.said} ${one.also}`);
  });

  it("is worth what its row says, word for word", async () => {
    const view = seenOf(one);
    const worth = worthOf(view.working, view.draft);
    expect(worth.word).toBe(one.worth);
    const row = recordOf(view);
    if (row === undefined) throw new Error("not yet a row");
    const outcome = await recorded(openMemory(), row);
    if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
    expect(outcome.differences).toEqual([]);
    expect(outcome.results.Verdict).toBe(view.working.judgement?.verdict);
    expect(outcome.results.Worth).toBe(worthText(worth));
    const half = outcome.results["± FFA %"];
    const { doubt } = view.working;
    if (doubt === undefined) expect(typeof half).not.toBe("number");
    else expect(Number(half) / doubt.halfWidth).toBeCloseTo(1, 12);
  });
});

describe("the words for titrations as they are typed", () => {
  const all = Object.values(typed);
  it("are never the same for good and bad, nor for any two", () => {
    expect(new Set(all.map(spoken)).size).toBe(all.length);
  });

  it("say to use it where it is good, and never where it is not", () => {
    for (const one of all) {
      const isUse = / use /.test(one.said);
      if (one.worth === "Good") expect(isUse, one.said).toBe(true);
      if (one.worth === "Not yet") expect(isUse, one.said).toBe(false);
    }
  });
});
