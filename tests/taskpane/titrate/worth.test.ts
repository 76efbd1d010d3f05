import { describe, expect, it } from "vitest";
import { worthOf } from "../../../src/taskpane/titrate/worth";
import { but, type Slip, viewOfSlip } from "./slip";

const worth = (slip: Slip) => {
  const { working, draft } = viewOfSlip(slip);
  return worthOf(working, draft);
};
const words = (...titres: string[]): string => {
  const { word, why } = worth(but({ titres }));
  return [word, ...why].join(": ");
};

/** As a maker would type them, good and bad. */
const eight: readonly (readonly [titres: readonly string[], said: RegExp])[] = [
  [["1.55", "1.60", "1.58"], /^Good$/],
  [["2.40", "2.40", "2.40"], /^Good$/],
  [["3.40", "2.50", "2.45"], /^Not yet: 3\.40 mL is 0\.90 mL away from the two that agree/],
  [["1.55", "16.0", "1.58"], /^Not yet: 16\.00 mL is about ten times the others: was it 1\.60 mL/],
  [["2.30", "2.35", "4.00"], /^Not yet: 4\.00 mL is 1\.65 mL away from the two that agree/],
  [["2.30", "2.80"], /^Not yet: The two lie 0\.50 mL apart, and no one can say which/],
  [["2.40"], /^Not yet: One reading, 2\.40 mL: nothing to compare it with/],
  [["2.40", "2.45", "2.45", "2.40", "3.90"], /^Not yet: 3\.90 mL is 1\.45 mL away from the four/],
];

describe("what a result is worth", () => {
  it.each(eight)("%j is told what it is", (titres, said) => {
    expect(words(...titres)).toMatch(said);
  });

  it("is never told the same for good titres and for bad ones", () => {
    const good = eight.filter(([, said]) => said.source.includes("Good"));
    const verdictOf = (titres: readonly string[]) =>
      viewOfSlip(but({ titres })).working.judgement?.verdict ?? "";
    const ofGood = good.map(([titres]) => verdictOf(titres));
    for (const [titres] of eight.filter((each) => !good.includes(each))) {
      expect(ofGood).not.toContain(verdictOf(titres));
      expect(verdictOf(titres)).not.toMatch(/: use /);
    }
  });

  it("is usable where a doubt is not counted, and says which", () => {
    expect(worth(but({ typed: { strengthPercent: "" } }))).toEqual({
      word: "Usable",
      why: ["The ± does not count how sure the titrant is: say that in step 1 of Titrate."],
    });
    // and of a ± that is not there it is not told what it leaves out
    expect(worth(but({ typed: { massStep: "", strengthPercent: "" } })).why).toEqual([
      "Its ± is not known yet.",
    ]);
    const byVolume = but({
      typed: { volume: "5", temperature: "25", samplePercent: "5", mass: "" },
      picked: { sample: "by volume", oil: "canola" },
    });
    expect(worth(byVolume).why).toEqual(["The sample was measured, not weighed."]);
  });

  it("is usable, not good, where its ± is more than a fifth of it", () => {
    // by hand: 12.706 x 0.07071 x sqrt(1/2 + 1) = 1.10 of 2.30 mL
    expect(worth(but({ titres: ["2.40", "2.50"] }))).toEqual({
      word: "Usable",
      why: ["Its ± is more than a fifth of it: titrate again before a large batch."],
    });
  });

  it("is near zero, and not usable, where its ± is more than itself: with both numbers", () => {
    // by hand: 12.706 x 0.07071 x sqrt(1/2 + 1) = 1.10 mL beside 0.25 - 0.15 = 0.10 mL. A mL of 0.0998
    // mol/L on 10 g is 0.0998 x 282.46/100 = 0.282 % FFA: 0.028 %, and 0.31 %
    const { word, why } = worth(but({ titres: ["0.30", "0.20"] }));
    expect(word).toBe("Near zero");
    expect(why).toHaveLength(1);
    expect(why[0]).toMatch(
      /^0\.03 % FFA ± 0\.3[12] cannot be told from zero: titrate a larger sample\.$/,
    );
  });

  it("is never called usable with a bare word to titrate again, as if it were not", () => {
    const { word, why } = worth(but({ titres: ["2.40", "2.50"] }));
    expect(word).toBe("Usable");
    for (const reason of why) expect(reason).not.toMatch(/titrate again\.$/i);
  });
});
