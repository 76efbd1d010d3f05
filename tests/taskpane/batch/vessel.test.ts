import { describe, expect, it } from "vitest";
import { tooMuchFor } from "../../../src/taskpane/batch/vessel";
import { but, seen, whole } from "./slate";

describe("the vessel of My bench", () => {
  // by hand: 100 L of 0.915 kg/L less its acid, 6 to 1: 91.5 x (1 - 5/56.1 x 0.282468) x 6 x 32.042/885.43/0.7914
  // (triolein) is 24.47 L, and 124.47 L with the oil: 32.88 US gallons
  it("is too small for oil and methanol together, in its own unit", () => {
    expect(tooMuchFor(seen(whole), { vessel: "124", unit: "L" })).toBe(
      "Oil and methanol are 124.5 L, and the vessel holds 124.0 L: make less.",
    );
    expect(tooMuchFor(seen(whole), { vessel: "32", unit: "US gal" })).toBe(
      "Oil and methanol are 32.88 US gal, and the vessel holds 32.00 US gal: make less.",
    );
  });

  // by hand: 100 kg are 109.29 L at 0.915 kg/L; their methanol is 24.47 x 100/91.5 = 26.74 L
  it("is as full of oil that was weighed", () => {
    const weighed = seen(but({ picked: { unit: "kg" } }));
    expect(tooMuchFor(weighed, { vessel: "135", unit: "L" })).toBe(
      "Oil and methanol are 136.0 L, and the vessel holds 135.0 L: make less.",
    );
    const pounds = seen(but({ picked: { unit: "lb" } }));
    // 136.03 L x 0.45359237 = 61.70 L
    expect(tooMuchFor(pounds, { vessel: "61", unit: "L" })).toContain("are 61.70 L");
    expect(tooMuchFor(pounds, { vessel: "62", unit: "L" })).toBeUndefined();
  });

  it("is large enough, or nobody can tell", () => {
    expect(tooMuchFor(seen(whole), { vessel: "126", unit: "L" })).toBeUndefined();
    expect(tooMuchFor(seen(whole), { unit: "L" })).toBeUndefined();
    expect(tooMuchFor(seen(whole), { vessel: "1", unit: "kg" })).toBeUndefined();
  });
});
