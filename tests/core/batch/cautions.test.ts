import { describe, expect, it } from "vitest";
import { batchCautions, caution, cautions } from "../../../src/core/batch/cautions";

describe("the cautions of a batch", () => {
  it("are all of them but that of a water test by gas", () => {
    expect(cautions).toHaveLength(19);
    expect(batchCautions).toHaveLength(18);
    expect(cautions).toContain(caution("hydride"));
    expect(batchCautions).not.toContain(caution("hydride"));
    expect(new Set(batchCautions)).toEqual(
      new Set(cautions.filter((each) => each !== caution("hydride"))),
    );
  });

  it("come as they are met: lye before what is drained, an acid step last, since few batches have one", () => {
    const place = (id: Parameters<typeof caution>[0]) => batchCautions.indexOf(caution(id));
    const met = ["company", "drying", "methanol", "lye", "crudeFuel", "sulfuricAcid"] as const;
    const order = met.map(place);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(place("sulfuricAcid")).toBe(batchCautions.length - 1);
  });
});
