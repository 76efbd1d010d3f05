import { describe, expect, it } from "vitest";
import { batch } from "../../../src/taskpane/batch/batch";
import { newDraft } from "../../../src/taskpane/batch/draft";
import { reduce } from "../../../src/taskpane/batch/reducer";
import { batchFrom, lyeFrom, titrationFrom } from "../../../src/taskpane/bench/begin-from";
import { otherwise } from "../../../src/taskpane/bench/otherwise";
import { intoGaps } from "../../../src/taskpane/stepped/entered";
import type { BenchValues } from "../../../src/workbook/tables/bench";

const values: BenchValues = {
  titrantBase: "NaOH",
  molarity: "0.1",
  base: "KOH",
  assayKOH: "90",
  assayNaOH: "99.5",
  chargeKOH: "7.5",
  lotNaOH: "N-12",
  chargeNaOH: "5",
  chargeUnit: "g per litre",
  chargeIs: "pure base",
  unit: "US gal",
  amount: "55",
  limit: "2.5",
};

describe("a task begun from my bench", () => {
  it("has the titrant's base and strength, in the mark of the place", () => {
    expect(titrationFrom(values, ",")).toEqual({
      do: "begin-with",
      typed: { molarity: "0,1" },
      picked: { base: "NaOH", way: "molarity", oneTenth: "molarity" },
    });
  });

  it("has the assay and the charge of its own base, and of the other once that is picked", () => {
    expect(batchFrom(values, ".")).toEqual({
      do: "begin-with",
      typed: { assay: "90", chargeGrams: "7.5", amount: "55", limit: "2.5" },
      picked: { base: "KOH", unit: "us_gal", chargeUnit: "g/L", chargeIs: "pure" },
    });
    expect(lyeFrom(values, ".", "NaOH")).toMatchObject({
      typed: { assay: "99.5", chargeGrams: "5" },
      words: { lyeLot: "N-12" },
    });
  });

  it("has no charge that may be pure or as weighed, and no amount without its unit", () => {
    const { chargeIs, unit, ...rest } = values;
    expect([chargeIs, unit]).toEqual(["pure base", "US gal"]);
    expect(batchFrom(rest, ".")).toEqual({
      do: "begin-with",
      typed: { assay: "90", limit: "2.5" },
      picked: { base: "KOH" },
    });
  });

  it("fills only gaps after another batch, and says what the bench says otherwise", () => {
    const first = reduce(newDraft(), batchFrom(values, "."));
    const opened = reduce(first, { do: "type", field: "assay", text: "85" });
    const next = newDraft(opened);
    const filled = reduce(next, intoGaps(next, batchFrom(values, ".")));
    expect(filled.typed.assay).toBe("85");
    expect(filled.typed.limit).toBe("2.5");
    expect(otherwise(batch, filled, lyeFrom(values, ".", "KOH"), ".")).toEqual([
      "Assay of the lye 90 %",
    ]);
    const same = reduce(filled, { do: "type", field: "assay", text: "90.0" });
    expect(otherwise(batch, same, lyeFrom(values, ".", "KOH"), ".")).toEqual([]);
  });
});
