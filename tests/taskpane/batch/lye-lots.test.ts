import { describe, expect, it } from "vitest";
import { lyeLotsOf } from "../../../src/taskpane/batch/lye-lots";
import type { RecordedBatch } from "../../../src/workbook/planning/read-batches";

const batch = (base: string, lyeLot: string, assay: number | ""): RecordedBatch => ({
  row: 4,
  batch: "B-1",
  date: undefined,
  unit: "l",
  oils: [],
  base,
  lyeLot,
  alike: [],
  under: (heading) => (heading === "Assay %" ? assay : ""),
});

const batches = [
  batch("KOH", "K-9", 88),
  batch("KOH", "k-9", 90),
  batch("NaOH", "N-1", 98),
  batch("KOH", "", 91),
  batch("KOH", "K-8", ""),
  batch("KOH", "K-7", 89.5),
];

describe("lots of lye used before", () => {
  it("are those of the base, each once with its last assay, the latest first", () => {
    const koh = lyeLotsOf(batches, "KOH", { lot: "", assay: undefined });
    expect(koh.map(({ lot, assay }) => `${lot} ${assay}`)).toEqual(["K-9 88", "K-7 89.5"]);
    expect(lyeLotsOf(batches, "NaOCH3", { lot: "", assay: undefined })).toEqual([]);
  });

  it("leave out the one in hand, unless its assay is another", () => {
    const left = (assay: string) =>
      lyeLotsOf(batches, "KOH", { lot: " k-9 ", assay }).map(({ lot }) => lot);
    expect(left("88")).toEqual(["K-7"]);
    expect(left("90")).toEqual(["K-9", "K-7"]);
  });
});
