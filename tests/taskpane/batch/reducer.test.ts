import { describe, expect, it } from "vitest";
import { newDraft } from "../../../src/taskpane/batch/draft";
import { draftFrom } from "../../../src/taskpane/batch/stored";
import { publishedCharges } from "../../../src/core/reference/base-charges";
import { after, but, draftOf, whole } from "./slate";

describe("a batch under way", () => {
  it("begins without a charge, a limit or a lot: nothing is taken for granted but 6 to 1, which is seen", () => {
    const draft = newDraft();
    expect(draft.typed).toEqual({ ratio: "6" });
    expect([draft.picked.chargeIs, draft.lots]).toEqual(["", []]);
  });

  it("takes a published level as pure base, in its own unit", () => {
    const charge = publishedCharges.find(({ base, unit }) => base === "KOH" && unit === "g/L");
    if (!charge) throw new Error("no charge");
    const draft = after(newDraft(), { do: "take-charge", charge });
    expect(draft.picked).toMatchObject({ chargeUnit: "g/L", chargeIs: "pure" });
    expect(draft.typed.chargeGrams).toBe("7");
  });

  it("asks anew for assay and charge when the base is another: they are of the one before", () => {
    const draft = after(draftOf(whole), { do: "pick", picked: { base: "NaOH" } });
    expect(draft.picked.chargeIs).toBe("");
    const { assay, chargePercent, chargeGrams } = draft.typed;
    expect([assay, chargePercent, chargeGrams]).toEqual([undefined, undefined, undefined]);
    const same = after(draftOf(whole), { do: "pick", picked: { base: "KOH" } });
    expect(same.typed.chargePercent).toBe("0.765");
  });

  it("chooses each lot once, up to a dozen, and lets one go", () => {
    const marks = [..."AABCDEFGHIJKLMN"];
    const draft = draftOf({ lots: marks });
    expect(draft.lots.map(({ lot }) => lot).join("")).toBe("ABCDEFGHIJKL");
    const fewer = after(draft, { do: "choose-lot", lot: "B", isChosen: false });
    expect(fewer.lots.map(({ lot }) => lot).join("")).toBe("ACDEFGHIJKL");
  });

  it("is not recorded any more once something is changed, but is when one only looks round", () => {
    const done = after(draftOf(whole), { do: "recorded" });
    expect(after(done, { do: "go", step: "oil" }).isRecorded).toBe(true);
    expect(after(done, { do: "type", field: "amount", text: "1" }).isRecorded).toBe(false);
  });

  it("leaves vessel and lye to the next batch, never the lots, the limit or the number", () => {
    const next = newDraft(draftOf(but({ typed: { temperature: "45", former: "700" } })));
    expect(next.typed).toEqual({ ratio: "6", amount: "100", assay: "90", chargePercent: "0.765" });
    expect([next.lots, next.words.batch]).toEqual([[], ""]);
  });

  it("comes back out of storage as it went in, and any rubbish is a new one", () => {
    const draft = draftOf(but({ lots: ["A", "B"], shares: { A: "60" } }));
    expect(draftFrom(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
    for (const rubbish of [undefined, null, 7, "x", [], {}, { version: 2 }]) {
      expect(draftFrom(rubbish)).toEqual(newDraft());
    }
    const spoilt = {
      ...draft,
      step: "x",
      lots: [1, { lot: "A" }, { lot: "A" }],
      picked: { base: "HCl" },
    };
    expect(draftFrom(spoilt)).toMatchObject({
      step: "oil",
      lots: [{ lot: "A", share: "" }],
      picked: { base: "KOH" },
    });
  });
});
