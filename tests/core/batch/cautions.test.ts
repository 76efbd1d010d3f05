import { describe, expect, it } from "vitest";
import { batchCautions, caution, cautions } from "../../../src/core/batch/cautions";

describe("the cautions of a batch", () => {
  it("are all of them but that of a water test by gas", () => {
    expect(cautions).toHaveLength(19);
    expect(batchCautions).toHaveLength(18);
    expect(cautions).toContain(caution("hydride"));
    expect(batchCautions).not.toContain(caution("hydride"));
  });
});
