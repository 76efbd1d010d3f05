import { describe, expect, it } from "vitest";
import { lastUsed, lyeLotsOf } from "../../../src/taskpane/batch/lye-lots";
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

  it("have that of My bench before them, also where no batch was made with it yet", () => {
    const bench = { lotKOH: "K-210", assayKOH: "91" };
    const named = (lot: string) =>
      lyeLotsOf(batches, "KOH", { lot, assay: "91" }, bench).map((each) => each.lot);
    expect(named("")).toEqual(["K-210", "K-9", "K-7"]);
    expect(named("K-210")).toEqual(["K-9", "K-7"]);
    // a mark on a label is of little use without how much of it is base
    expect(lyeLotsOf([], "KOH", { lot: "", assay: "" }, { lotKOH: "K-210" })).toEqual([]);
  });

  it("come with a base that is chosen: the one used last, unless My bench says which", () => {
    expect(lastUsed(batches, "NaOH", {})).toMatchObject({ lot: "N-1", assay: "98" });
    expect(lastUsed(batches, "NaOH", { assayNaOH: "99" })).toBeUndefined();
    expect(lastUsed(batches, "NaOCH3", {})).toBeUndefined();
  });

  it("have those of the workbook's own table between My bench and the batches, of their base alone", () => {
    const kept = [
      { base: "KOH", lot: "K-11", assay: "89" },
      { base: "KOH", lot: "k-9", assay: "85" },
      { base: "NaOH", lot: "N-2", assay: "99" },
    ];
    const bench = { lotKOH: "K-210", assayKOH: "91" };
    const koh = lyeLotsOf(batches, "KOH", { lot: "", assay: undefined }, bench, kept);
    expect(koh.map(({ lot, assay }) => `${lot} ${assay}`)).toEqual([
      "K-210 91",
      "K-11 89",
      "k-9 85",
      "K-7 89.5",
    ]);
    expect(lastUsed(batches, "NaOH", {}, kept)).toMatchObject({ lot: "N-2", assay: "99" });
    expect(lastUsed(batches, "NaOH", { assayNaOH: "98" }, kept)).toBeUndefined();
  });
});
