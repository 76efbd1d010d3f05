import { describe, expect, it } from "vitest";
import { isTenthAsked } from "../../../src/taskpane/titrate/strength";
import { tenthMeans } from "../../../src/taskpane/titrate/nudges/titrant";
import { baseOf } from "../../../src/taskpane/titrate/strength";
import { after, draftOf, seen, type Slip, viewOfSlip } from "./slip";

const strength = (slip: Slip) => viewOfSlip(slip).working.strength;
const molarity = (slip: Slip): number | undefined => strength(slip)?.molarity.toNumber();

describe("the strength of the titrant", () => {
  it("is mol/L as typed, and normality is the same for these bases", () => {
    expect(molarity({ typed: { molarity: "0.0998" }, picked: { way: "molarity" } })).toBe(0.0998);
    expect(molarity({ typed: { normality: "0,0998" }, picked: { way: "normality" } })).toBe(0.0998);
    expect(molarity({ typed: { certified: "0.1" }, picked: { way: "certified" } })).toBe(0.1);
  });

  it("comes from g/L by molar mass and assay: 1 g/L of pure KOH is 1 / 56.1053 mol/L", () => {
    const slip: Slip = {
      typed: { gramsPerLitre: "1", assay: "100" },
      picked: { way: "gramsPerLitre" },
    };
    expect(molarity(slip)).toBeCloseTo(0.0178236, 7);
    const at90 = { ...slip, typed: { gramsPerLitre: "1", assay: "90" } };
    expect(molarity(at90)).toBeCloseTo(0.9 / 56.1053, 12);
  });

  it("comes from % w/v, which is grams in 100 mL: 0.1 % of NaOH is 1 / 39.99677 mol/L", () => {
    const slip: Slip = {
      typed: { percent: "0.1", assay: "100" },
      picked: { way: "percent", base: "NaOH", oneTenth: "percent" },
    };
    const draft = after(draftOf(slip), { do: "pick", picked: { oneTenth: "percent" } });
    expect(seen(draft).working.strength?.molarity.toNumber()).toBeCloseTo(0.025002, 7);
  });

  it("comes from weighing: 2.04065 g of 98 % NaOH in 0.5 L is 0.1 mol/L", () => {
    // 0.1 x 0.5 x 39.99676928 / 0.98 = 2.0406515 g
    const slip: Slip = {
      typed: { lyeMass: "2.0406515", lyeVolume: "0.5", assay: "98" },
      picked: { way: "weighed", base: "NaOH" },
    };
    expect(molarity(slip)).toBeCloseTo(0.1, 7);
  });

  it("comes from KHP: 0.5105 g and 25.00 mL is 1000 x 0.5105 / (204.2223 x 25) mol/L", () => {
    const slip: Slip = {
      typed: { phthalateMass: "0.5105", phthalateTitre: "25.00" },
      picked: { way: "phthalate" },
    };
    expect(molarity(slip)).toBeCloseTo(0.0999891, 7);
    const impure = { ...slip, typed: { ...slip.typed, phthalatePurity: "99.9" } };
    expect(molarity(impure)).toBeCloseTo(0.999 * 0.09998908, 7);
    const wrong = { ...slip, typed: { ...slip.typed, phthalatePurity: "0.999" } };
    expect(molarity(wrong)).toBeUndefined();
  });

  it("says how it was set, in the words of the logbook", () => {
    const setBy = (slip: Slip) => strength(slip)?.setBy;
    expect(setBy({ typed: { certified: "0.1" }, picked: { way: "certified" } })).toBe(
      "certificate",
    );
    expect(
      setBy({ typed: { gramsPerLitre: "1", assay: "90" }, picked: { way: "gramsPerLitre" } }),
    ).toBe("weighing");
  });

  it("waits for the assay, unless the batch's own lye is used", () => {
    const slip: Slip = { typed: { gramsPerLitre: "1" }, picked: { way: "gramsPerLitre" } };
    expect(molarity(slip)).toBeUndefined();
    const own = strength({ ...slip, picked: { way: "gramsPerLitre", assay: "same-lye" } });
    expect(own?.isAtMost).toBe(true);
    expect(own?.gramsPerLitre?.toNumber()).toBe(1);
    expect(own?.molarity.toNumber()).toBeCloseTo(0.0178236, 7);
  });

  it("is refused above 2 mol/L, though each figure is in range", () => {
    const slip: Slip = {
      typed: { lyeMass: "20000", lyeVolume: "1", assay: "90" },
      picked: { way: "weighed" },
    };
    const view = viewOfSlip(slip);
    expect(view.working.strength).toBeUndefined();
    expect(view.wants.map(({ sentence }) => sentence).join(" ")).toContain("Check mass and volume");
  });
});

describe("a bare 0.1", () => {
  const asked = (slip: Slip): boolean => {
    const { draft, figures } = viewOfSlip(slip);
    return isTenthAsked(draft, figures);
  };

  it("is asked about as mol/L and as percent, however it is written", () => {
    for (const text of ["0.1", "0,1", ".1", "0.10", "0.100"]) {
      expect(asked({ typed: { molarity: text }, picked: { way: "molarity" } })).toBe(true);
      expect(asked({ typed: { percent: text }, picked: { way: "percent" } })).toBe(true);
    }
  });

  it("is not asked about where only one thing can be meant", () => {
    expect(asked({ typed: { molarity: "0.0998" }, picked: { way: "molarity" } })).toBe(false);
    expect(asked({ typed: { normality: "0.1" }, picked: { way: "normality" } })).toBe(false);
    expect(asked({ typed: { certified: "0.1" }, picked: { way: "certified" } })).toBe(false);
  });

  it("gives no strength until it is answered, and then the one that was meant", () => {
    const draft = draftOf({
      typed: { molarity: "0.1", assay: "100" },
      picked: { way: "molarity" },
    });
    expect(seen(draft).working.strength).toBeUndefined();
    const molar = after(draft, { do: "answer-tenth", meant: "molarity" });
    expect(seen(molar).working.strength?.molarity.toNumber()).toBe(0.1);
    const percent = after(draft, { do: "answer-tenth", meant: "percent" });
    expect(percent.picked.way).toBe("percent");
    expect(seen(percent).working.strength?.molarity.toNumber()).toBeCloseTo(0.0178236, 7);
  });

  it("is asked about anew when the number was changed and typed again", () => {
    const draft = after(
      draftOf({ typed: { molarity: "0.1" }, picked: { way: "molarity" } }),
      { do: "answer-tenth", meant: "molarity" },
      { do: "type", field: "molarity", text: "0.2" },
      { do: "type", field: "molarity", text: "0.1" },
    );
    expect(isTenthAsked(draft, seen(draft).figures)).toBe(true);
  });

  it("is shown with what each holds: 5.61 g of KOH and 4.00 g of NaOH to 1 g", () => {
    expect(tenthMeans(baseOf(draftOf({ picked: { base: "KOH" } })))).toEqual({
      apart: "5.61",
      molarity: "0.1 mol/L: 5.61 g in a litre",
      percent: "0.1 %: 1 g in a litre, 0.0178 mol/L",
    });
    expect(tenthMeans(baseOf(draftOf({ picked: { base: "NaOH" } }))).apart).toBe("4.00");
  });
});
