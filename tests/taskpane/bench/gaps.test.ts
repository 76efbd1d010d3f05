/** My bench kept while something is under way: what was typed stays, and what is empty is filled and said. */
import { describe, expect, it } from "vitest";
import { batch } from "../../../src/taskpane/batch/batch";
import { newDraft as newBatch } from "../../../src/taskpane/batch/draft";
import { reduce as reduceBatch } from "../../../src/taskpane/batch/reducer";
import { batchGaps, gapWords, titrationGaps } from "../../../src/taskpane/bench/gaps";
import { newDraft } from "../../../src/taskpane/titrate/draft";
import { reduce } from "../../../src/taskpane/titrate/reducer";
import { titration } from "../../../src/taskpane/titrate/titration";
import type { BenchValues } from "../../../src/workbook/tables/bench";

const values: BenchValues = {
  titrantBase: "KOH",
  molarity: "0.1",
  strengthPercent: "1",
  titreStep: "0.05",
  massStep: "0.01",
  base: "KOH",
  assayKOH: "90",
  lotKOH: "K-207",
  chargeKOH: "7",
  chargeUnit: "g per litre",
  chargeIs: "pure base",
  ratio: "6",
  limit: "3",
};

const begun = reduce(newDraft("a", "2026-09-30"), { do: "write", words: { lot: "SW-20" } });
const typing = (field: "molarity" | "titreStep", text: string) =>
  reduce(begun, { do: "type", field, text });

describe("the gaps of a titration under way", () => {
  it("are filled, which is said", () => {
    const gaps = titrationGaps(typing("titreStep", "0,1"), values, ",");
    expect(gaps.typed).toEqual({ molarity: "0,1", strengthPercent: "1", massStep: "0,01" });
    expect(gapWords(titration, gaps).join("; ")).toMatch(/0,1 mol\/L.*1 %.*0,01 g/);
    expect(reduce(typing("titreStep", "0,1"), gaps).typed.titreStep).toBe("0,1");
  });

  it("take no strength of another titrant, nor its ±", () => {
    const left = { titreStep: "0.05", massStep: "0.01" };
    expect(titrationGaps(typing("molarity", "0.0998"), values, ".").typed).toEqual(left);
    const other = reduce(begun, { do: "pick", picked: { base: "NaOH" } });
    expect(titrationGaps(other, values, ".").typed).toEqual(left);
    const weighed = reduce(begun, { do: "pick", picked: { way: "weighed" } });
    expect(titrationGaps(weighed, values, ".").typed).toEqual(left);
  });
});

describe("what is recorded already", () => {
  it("stays as it was recorded, gaps and all", () => {
    const titration = reduce(begun, { do: "recorded" });
    const made = reduceBatch(newBatch(), { do: "recorded" });
    expect(titrationGaps(titration, values, ".").typed).toEqual({});
    expect(batchGaps(made, values, ".")).toEqual({ do: "begin-with", typed: {}, picked: {} });
  });
});

describe("the gaps of a batch under way", () => {
  it("take a charge with its unit and its meaning, and none beside one that was typed", () => {
    const draft = reduceBatch(newBatch(), { do: "write", words: { batch: "B-1" } });
    const gaps = batchGaps(draft, values, ".");
    expect(gaps).toMatchObject({
      typed: { assay: "90", chargeGrams: "7", limit: "3" },
      picked: { chargeUnit: "g/L", chargeIs: "pure" },
      words: { lyeLot: "K-207" },
    });
    expect(gapWords(batch, gaps).at(-1)).toMatch(/K-207$/);
    const theirs = reduceBatch(draft, { do: "type", field: "chargePercent", text: "0.8" });
    expect(batchGaps(theirs, values, ".").typed).toEqual({ assay: "90", limit: "3" });
  });
});
