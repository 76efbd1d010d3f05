import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { newDraft } from "../../../src/taskpane/what-if/draft";
import { linesOf, dosePlot, mostLines, plotWords } from "../../../src/taskpane/what-if/plot";
import { previewOf } from "../../../src/taskpane/what-if/preview";
import { reduce } from "../../../src/taskpane/what-if/reducer";
import { oilTrouble } from "../../../src/taskpane/what-if/working";
import { draftFrom } from "../../../src/taskpane/what-if/stored";
import type { View } from "../../../src/taskpane/what-if/view-of";
import { dosesOf } from "../../../src/workbook/what-if/doses";
import type { WhatIfQuestion } from "../../../src/workbook/what-if/question";
import { byHand } from "../../workbook/what-if/questions";
import { after, filled, lot, seen, sentences } from "./drafts";

function question(view: View): WhatIfQuestion {
  const found = view.working.question;
  if (!found) throw new Error(sentences(view).join(" "));
  return found;
}

const whole = (asked: WhatIfQuestion) => {
  const found = dosesOf(asked);
  if (isProblem(found)) throw new Error("no doses");
  return found;
};

describe("a what-if table under way", () => {
  it("says at first what is wanted, and where", () => {
    const { working } = seen(newDraft());
    expect(working.question).toBeUndefined();
    expect(working.wants).toEqual([
      { step: "sizes", sentence: "Fill in Batch sizes." },
      { step: "compare", sentence: "Fill in Assay of the lye." },
      { step: "compare", sentence: "Fill in Base charge, pure." },
      { step: "compare", sentence: "Fill in Acid values to compare." },
    ]);
  });

  it("becomes a question whose doses are those of the hand arithmetic", () => {
    const asked = question(seen(after(...filled)));
    const doses = whole(asked).rows.map((row) =>
      row.map((dose) => (isProblem(dose) ? 0 : dose.toNumber())),
    );
    for (const [row, size] of [100, 200].entries()) {
      for (const [column, acid] of [2, 5].entries()) {
        expect((doses[row]?.[column] ?? 0) / byHand(size * 0.915, acid)).toBeCloseTo(1, 12);
      }
    }
  });

  it("holds the doses of a lot back whose readings are apart, until it is used all the same", () => {
    const why = "lot K: The two lie 0.50 mL apart.";
    const lots = [
      { ...lot("K", 5), worth: { word: "Not yet" as const, why: ["The two lie 0.50 mL apart."] } },
    ];
    const held = after(
      ...filled,
      { do: "list", list: "acid", text: "" },
      { do: "choose-lot", lot: "K", isChosen: true },
    );
    expect(sentences(seen(held, lots))).toContain(`No dose yet of ${why} Or use it all the same.`);
    const used = reduce(held, { do: "use-all-the-same", why, isUsed: true });
    expect(question(seen(used, lots)).columns[0]?.acid.usedAllTheSame).toBe(why);
    expect(question(seen(draftFrom(used), lots))).toEqual(question(seen(used, lots)));
    const back = reduce(used, { do: "use-all-the-same", why, isUsed: false });
    expect(seen(back, lots).working.question).toBeUndefined();
  });

  it("understands a decimal comma where that is usual", () => {
    const draft = after(
      ...filled,
      { do: "list", list: "acid", text: "2,5; 5,25" },
      { do: "type", field: "charge", text: "0,765" },
    );
    const asked = question(seen(draft, undefined, ","));
    expect(asked.columns.map(({ acid }) => String(acid.value))).toEqual(["2.5", "5.25"]);
    expect(String(asked.columns[0]?.charge)).toBe("0.765");
  });

  it("compares assays, charges and bases as well, with one acid value", () => {
    const rest = [
      { do: "list", list: "sizes", text: "100" },
      { do: "type", field: "acid", text: "4" },
    ] as const;
    const assays = after(
      ...rest,
      { do: "pick", picked: { by: "assay" } },
      { do: "list", list: "assay", text: "85 90" },
      { do: "type", field: "charge", text: "0.765" },
    );
    expect(question(seen(assays)).columns.map(({ assay }) => String(assay))).toEqual(["85", "90"]);
    const charges = after(
      ...rest,
      { do: "pick", picked: { by: "charge" } },
      { do: "list", list: "charge", text: "0.5 1" },
      { do: "type", field: "assay", text: "90" },
    );
    expect(question(seen(charges)).columns.map(({ charge }) => String(charge))).toEqual([
      "0.5",
      "1",
    ]);
    const bases = after(
      ...rest,
      { do: "pick", picked: { by: "base" } },
      { do: "choose-base", base: "KOH", isChosen: true },
      { do: "choose-base", base: "NaOH", isChosen: true },
      { do: "type", field: "assayKOH", text: "90" },
      { do: "type", field: "chargeKOH", text: "0.765" },
      { do: "type", field: "assayNaOH", text: "98" },
    );
    expect(sentences(seen(bases))).toEqual(["Fill in Base charge, pure of NaOH."]);
    const both = reduce(bases, { do: "type", field: "chargeNaOH", text: "0.546" });
    expect(
      question(seen(both)).columns.map(({ base, assay }) => `${base.name} ${String(assay)}`),
    ).toEqual(["KOH 90", "NaOH 98"]);
  });

  it("takes acid values from recorded lots, by reference, beside typed ones or alone", () => {
    const lots = [lot("NQ-44", 3.2), lot(12, 6.1), lot("SW-19", undefined)];
    const chosen = after(
      ...filled,
      { do: "choose-lot", lot: "NQ-44", isChosen: true },
      { do: "choose-lot", lot: "12", isChosen: true },
    );
    const columns = (text: string) =>
      question(seen(reduce(chosen, { do: "list", list: "acid", text }), lots)).columns.map(
        ({ acid }) => acid.lot ?? Number(acid.value),
      );
    expect(columns("2")).toEqual(["NQ-44", 12, 2]);
    expect(columns("")).toEqual(["NQ-44", 12]);
    const gone = reduce(chosen, { do: "choose-lot", lot: "SW-19", isChosen: true });
    expect(sentences(seen(gone, lots))).toEqual(["Lot SW-19 shows no acid value: #N/A."]);
    expect(sentences(seen(chosen))).toEqual(["The recorded lots are still being read."]);
    expect(sentences(seen(chosen, []))).toEqual([
      "Lot NQ-44 is not in Titrations any more.",
      "Lot 12 is not in Titrations any more.",
    ]);
  });

  it("refuses 0 C, which a cell would hold as nothing, and says what to type", () => {
    const zero = after(...filled, { do: "type", field: "temperature", text: "0" });
    expect(sentences(seen(zero))).toEqual([
      "Oil temperature: a cell with 0 counts as empty, so type 0.01 for 0 °C.",
    ]);
    const near = after(...filled, { do: "type", field: "temperature", text: "0.01" });
    expect(Number(question(seen(near)).temperature)).toBe(0.01);
  });

  it("says at once that a fat is solid where its volume is asked for, and not where it is weighed", () => {
    const solid = after({ do: "pick", picked: { oil: "tallow" } });
    expect(oilTrouble(seen(solid))).toBe(
      "tallow is solid at 20 C: weigh it, or warm it to 45 C and give the temperature.",
    );
    const warm = reduce(solid, { do: "type", field: "temperature", text: "50" });
    const weighed = reduce(solid, { do: "pick", picked: { unit: "lb" } });
    expect([oilTrouble(seen(warm)), oilTrouble(seen(weighed))]).toEqual([undefined, undefined]);
  });

  it("writes an oil that is not in the list as its density", () => {
    const other = after(...filled, { do: "pick", picked: { oil: "" } });
    expect(question(seen(other)).oilCell).toBe(0.915);
    const dense = reduce(other, { do: "type", field: "density", text: "0.93" });
    expect(question(seen(dense)).oilCell).toBe(0.93);
  });

  it("is refused beyond fifty columns", () => {
    const many = Array.from({ length: 50 }, (_, at) => ((at + 1) / 10).toFixed(1)).join(" ");
    const draft = after(
      ...filled,
      { do: "list", list: "acid", text: many },
      { do: "choose-lot", lot: "NQ-44", isChosen: true },
    );
    expect(sentences(seen(draft, [lot("NQ-44", 3)]))).toEqual([
      "51 columns are too many; 50 at most.",
    ]);
  });
});

describe("a what-if table that was kept", () => {
  it("comes back as it was", () => {
    const draft = after(
      ...filled,
      {
        do: "pick",
        picked: {
          unit: "uk_gal",
          sizesBy: "steps",
          by: "base",
          acidFrom: "lot",
          form: "one-formula",
          place: "cell",
        },
      },
      { do: "choose-base", base: "NaOCH3", isChosen: true },
      { do: "choose-lot", lot: "NQ-44", isChosen: true },
      { do: "one-lot", lot: "12" },
      { do: "go", step: "table" },
    );
    expect(draftFrom(structuredClone(draft))).toEqual(draft);
  });

  it("is believed part by part, whatever was stored", () => {
    expect(draftFrom(undefined)).toEqual(newDraft());
    expect(draftFrom({ version: 2 })).toEqual(newDraft());
    const odd = {
      version: 1,
      step: "?",
      typed: { limit: 7, acid: "4" },
      lists: [],
      picked: { unit: "gal", by: "base" },
      lots: [1, "A", "A"],
      bases: ["KOH", "?"],
    };
    expect(draftFrom(odd)).toMatchObject({
      step: "sizes",
      typed: { acid: "4" },
      lists: { sizes: "" },
      picked: { unit: "l", by: "base" },
      lots: ["A"],
      bases: ["KOH"],
    });
  });
});

describe("the preview", () => {
  it("has a word for a refusal in its cell, and its sentence once below", () => {
    const asked = question(seen(after(...filled, { do: "list", list: "acid", text: "2 12" })));
    const preview = previewOf(asked, whole(asked));
    expect(preview.rows[0]?.cells[1]).toEqual({ text: "above limit", isRefused: true });
    // 12 x 282 / 561 = 6.03
    expect(preview.refusals).toEqual(["12 mg KOH/g: 6.03 % FFA is above the 5 % you allow."]);
    expect(preview.heads).toEqual(["2", "12"]);
    expect(preview.across).toBe("acid value, mg KOH/g");
  });

  it("shows no more than can be looked over, and says how many there are", () => {
    const acids = Array.from({ length: 50 }, (_, at) => String((at + 1) / 10)).join(" ");
    const sizes = Array.from({ length: 50 }, (_, at) => String(20 * (at + 1))).join(" ");
    const draft = after(
      ...filled,
      { do: "list", list: "acid", text: acids },
      { do: "list", list: "sizes", text: sizes },
    );
    const asked = question(seen(draft));
    const preview = previewOf(asked, whole(asked));
    expect([preview.rows.length, preview.rows[0]?.cells.length]).toEqual([30, 12]);
    expect(preview.left).toBe(
      "The first 30 of 50 sizes and 12 of 50 columns are shown here; all are written.",
    );
  });
});

describe("the plot", () => {
  const asked = question(
    seen(
      after(
        ...filled,
        { do: "list", list: "sizes", text: "200 50 100" },
        { do: "list", list: "acid", text: "2 5 12" },
      ),
    ),
  );
  const doses = whole(asked);

  it("leaves out what has no dose, and runs from the smallest size to the largest", () => {
    const lines = linesOf(asked, doses);
    expect(lines.map(({ name }) => name)).toEqual(["2 mg KOH/g", "5 mg KOH/g"]);
    expect(lines[0]?.points.map(([size]) => size)).toEqual([50, 100, 200]);
  });

  it("is said in words", () => {
    // by hand: 45.75 kg x (2 / 56.1 x 56.1053 + 7.65) / 0.9 = 490.6 g
    expect(plotWords(linesOf(asked, doses), "L", 0)).toBe(
      "Lye against batch size: 2 mg KOH/g, from 491 g at 50 L to 1962 g at 200 L; 5 mg KOH/g, from 643 g at 50 L to 2572 g at 200 L.",
    );
  });

  it("keeps every name within the drawing and a line's height from the next", () => {
    const lines = Array.from({ length: mostLines }, (_, at) => ({
      name: String(at),
      points: [[1, 100 + at] as const],
    }));
    const { lines: placed } = dosePlot(lines, { left: 40, right: 200, top: 20, bottom: 170 });
    const heights = placed.map(({ nameAt }) => nameAt).sort((a, b) => a - b);
    expect(heights.every((at) => at >= 20 && at <= 170)).toBe(true);
    for (const [index, at] of heights.slice(1).entries()) {
      expect(at - (heights[index] ?? 0)).toBeGreaterThanOrEqual(13.9);
    }
  });

  it("draws some of many, the first and the last among them", () => {
    const acids = Array.from({ length: 40 }, (_, at) => String((at + 1) / 10)).join(" ");
    const many = question(seen(after(...filled, { do: "list", list: "acid", text: acids })));
    const names = linesOf(many, whole(many)).map(({ name }) => name);
    expect(names).toHaveLength(mostLines);
    expect([names[0], names.at(-1)]).toEqual(["0.1 mg KOH/g", "4 mg KOH/g"]);
  });
});
