/** The curve of a probe, once its end point was put in. */
import { describe, expect, it } from "vitest";
import { newDraft } from "../../../src/taskpane/titrate/draft";
import {
  indicatorOf,
  isBlankByColour,
  puttingIn,
  titreOfCurve,
} from "../../../src/taskpane/titrate/probe-put";
import { reduce } from "../../../src/taskpane/titrate/reducer";

const curve = "1 6.0\n2 6.5\n3 9.8";
const begun = reduce(newDraft("a", "2026-09-30"), { do: "write", words: { probe: curve } });
const put = reduce(begun, { do: "write", words: puttingIn(begun) });
const added = reduce(put, { do: "add", list: "titres", reading: { used: "2.60" } });

describe("the curve of a probe", () => {
  it("is the titre that was added from it, and no further one, readings after it or not", () => {
    expect([titreOfCurve(begun), titreOfCurve(put), titreOfCurve(added)]).toEqual([
      undefined,
      undefined,
      1,
    ]);
    const more = reduce(added, { do: "write", words: { probe: `${curve}\n4 11.0\n` } });
    expect(titreOfCurve(more)).toBe(1);
  });

  it("is another once a fresh one was begun, and the next titre then", () => {
    const fresh = reduce(added, { do: "write", words: { probe: "1 6.1\n2 6.6\n3 9.9" } });
    expect(titreOfCurve(fresh)).toBeUndefined();
    const second = reduce(fresh, { do: "write", words: puttingIn(fresh) });
    expect(titreOfCurve(second)).toBeUndefined();
    const two = reduce(second, { do: "add", list: "titres", reading: { used: "2.60" } });
    expect(titreOfCurve(two)).toBe(2);
  });
});

describe("how the row says its titres were seen", () => {
  const byProbe = reduce(put, { do: "pick-once", picked: { indicator: "pH meter" } });
  const once = reduce(byProbe, { do: "add", list: "titres", reading: { used: "2.60" } });
  const typed = { do: "add", list: "titres", reading: { used: "2.55" } } as const;

  it("is by probe where all are, and both where the others were typed", () => {
    expect(indicatorOf(once)).toBe("pH meter");
    expect(indicatorOf(reduce(once, typed))).toBe("phenolphthalein and pH meter");
  });

  it("is by colour again once the probe's titre is left out", () => {
    const mixed = reduce(once, typed);
    const left = reduce(mixed, { do: "omit", index: 0, reason: "misread" });
    expect(indicatorOf(left)).toBe("phenolphthalein");
    expect(indicatorOf(reduce(left, { do: "put-back", index: 0 }))).toBe(
      "phenolphthalein and pH meter",
    );
  });

  it("is what the person picked where no curve was put in", () => {
    const picked = reduce(begun, { do: "pick", picked: { indicator: "pH meter" } });
    expect(indicatorOf(reduce(picked, typed))).toBe("pH meter");
  });
});

describe("the blank of a titration by probe", () => {
  const blank = (indicator: "phenolphthalein" | "turmeric" | "pH meter") => {
    const titrated = reduce(begun, {
      do: "pick",
      picked: { blank: "titrated", indicator },
    });
    return reduce(titrated, { do: "add", list: "blanks", reading: { used: "0.15" } });
  };

  it("was titrated to a colour where it was not the probe's", () => {
    expect(isBlankByColour(begun)).toBe(false);
    expect(isBlankByColour(blank("phenolphthalein"))).toBe(true);
    expect(isBlankByColour(blank("turmeric"))).toBe(true);
    expect(isBlankByColour(blank("pH meter"))).toBe(false);
  });
});
