import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { lyePerLitre } from "../../../src/taskpane/titrate/lye-per-litre";
import { sharesOf } from "../../../src/taskpane/titrate/shares";
import { withDoubt } from "../../../src/taskpane/widgets/shown-number";
import { exact } from "../../../src/core/exact/exact";
import { but, type Slip, viewOfSlip, whole } from "./slip";

const acidOf = (slip: Slip) => {
  const { acid } = viewOfSlip(slip).working;
  if (acid === undefined || isProblem(acid)) throw new Error("no acid");
  return acid;
};

describe("what follows from the readings", () => {
  it("is the mean less the blank: 2.40, 2.50, 2.45 less 0.15 is 2.30 mL", () => {
    expect(acidOf(whole).correctedTitre.toNumber()).toBe(2.3);
  });

  it("is the acid of AOCS Ca 5a-40: 10 mL of 0.1 mol/L on 28.2 g is 1.00 % as oleic", () => {
    const { ffa, acidValue } = acidOf(
      but({
        typed: { certified: "0.1", mass: "28.2" },
        picked: { blank: "neutralised" },
        titres: ["10.0", "10.0"],
      }),
    );
    expect(ffa.toNumber()).toBeCloseTo(1, 14);
    // 56.1 x 0.1 x 10 / 28.2
    expect(acidValue.toNumber()).toBeCloseTo(1.98936, 5);
  });

  it("takes each titre on its own mass: 56.1 x 0.1 x mean(2.00/5.02, 2.21/5.51)", () => {
    const { acidValue } = acidOf(
      but({
        typed: { certified: "0.1" },
        picked: { masses: "own" },
        blanks: ["0.10"],
        titres: [
          ["2.10", "5.02"],
          ["2.31", "5.51"],
        ],
      }),
    );
    expect(acidValue.toNumber()).toBeCloseTo(2.24258, 5);
  });

  it("judges the mean and the range as soon as they are there, without any mass", () => {
    const { judgement, acid } = viewOfSlip({ titres: ["2.40", "2.50"] }).working;
    expect(judgement?.mean.toNumber()).toBe(2.45);
    expect(judgement?.scatter?.range.toNumber()).toBe(0.1);
    expect(acid).toBeUndefined();
  });

  it("flags the reading by its number on the slip, also after one before it was omitted", () => {
    const view = viewOfSlip(but({ titres: ["2.40", "2.45", "2.45", "2.40", "3.90"] }));
    const marks = [...(view.working.judgement?.marks ?? [])];
    expect(marks.filter(([, mark]) => mark === "suspect")).toEqual([[5, "suspect"]]);
  });

  it("has a ± of 0.0453 % for three equal titres of 2.45 mL read to 0.1 on 7.05 g (by hand)", () => {
    // FFA 0.98; relative: 0.1/sqrt6/2.45 = 0.0166632 twice, for the titre and for the shade
    // the solvent was brought to, and 0.01/sqrt6/7.05 = 0.00057908; root of squares times 1.959964
    const { doubt } = viewOfSlip(
      but({
        typed: { certified: "0.1", mass: "7.05", titreStep: "0.1", strengthPercent: "" },
        picked: { blank: "neutralised" },
        titres: ["2.45", "2.45", "2.45"],
      }),
    ).working;
    expect(doubt?.halfWidth).toBeCloseTo(0.0452771, 6);
  });

  it("knows no ± from a single titre, nor before the steps are known", () => {
    expect(viewOfSlip(but({ titres: ["2.45"] })).working.doubt).toBeUndefined();
    expect(viewOfSlip(but({ typed: { titreStep: "" } })).working.doubt).toBeUndefined();
    expect(viewOfSlip(but({ typed: { massStep: "x" } })).working.doubt).toBeUndefined();
  });

  it("refuses a titre below its blank with both figures", () => {
    const { acid } = viewOfSlip(but({ titres: ["0.10"], blanks: ["0.15"] })).working;
    expect(isProblem(acid) && acid.fields.code).toBe("titre-below-blank");
  });

  it("leaves titrated blanks out when the solvent was neutralised", () => {
    const slip = but({ picked: { blank: "neutralised" } });
    expect(acidOf(slip).correctedTitre.toNumber()).toBe(2.45);
  });

  it("has no result before it is said what the blank is", () => {
    expect(viewOfSlip(but({ picked: { blank: "" } })).working.acid).toBeUndefined();
    expect(viewOfSlip(but({ blanks: [] })).working.acid).toBeUndefined();
  });
});

describe("a sample by volume", () => {
  const slip = but({
    typed: { volume: "5", temperature: "25", samplePercent: "5", mass: "" },
    picked: { sample: "by volume", oil: "canola" },
  });

  it("weighs its volume times the density there: 5 mL of canola at 25 C is 4.5605 g", () => {
    // (0.9154 - 5 x 0.00066) x 5
    const { ffa } = acidOf(slip);
    expect(ffa.toNumber()).toBeCloseTo((0.0998 * 2.3 * 282) / (10 * 4.5605), 10);
  });

  it("doubts its mass as much as ± 5 % does, whichever column the row says it in", () => {
    const equal = but({
      ...slip,
      titres: ["2.45", "2.45", "2.45"],
      picked: { ...slip.picked, blank: "neutralised" },
      typed: { ...slip.typed, strengthPercent: "" },
    });
    const { doubt, acid } = viewOfSlip(equal).working;
    if (!doubt || !acid || isProblem(acid)) throw new Error("no doubt");
    // relative: 0.05/sqrt6/2.45 for the reading and again for the shade, 0.05/sqrt3 for the sample
    const read = 0.05 / Math.sqrt(6) / 2.45;
    const relative = Math.hypot(read, read, 0.05 / Math.sqrt(3));
    expect(doubt.halfWidth / acid.ffa.toNumber()).toBeCloseTo(1.959964 * relative, 7);
  });
});

describe("the batch's own lye, assay unknown", () => {
  it("gives grams of it per litre: 2.30 mL of 1 g/L on 1 mL of oil is 2.30 g/L", () => {
    const view = viewOfSlip(
      but({
        typed: { gramsPerLitre: "1", volume: "1", mass: "" },
        picked: { way: "gramsPerLitre", assay: "same-lye", sample: "by volume" },
      }),
    );
    expect(lyePerLitre(view)?.toNumber()).toBeCloseTo(2.3, 12);
  });

  it("says nothing of the kind for a lye whose assay is known", () => {
    const view = viewOfSlip(
      but({ typed: { gramsPerLitre: "1", assay: "90" }, picked: { way: "gramsPerLitre" } }),
    );
    expect(lyePerLitre(view)).toBeUndefined();
  });
});

describe("the shares of the ±", () => {
  const titre = fc.integer({ min: 100, max: 400 }).map((steps) => (steps * 0.05).toFixed(2));

  it("come to 100 % but for bars too small to see, largest first", () => {
    fc.assert(
      fc.property(fc.array(titre, { minLength: 2, maxLength: 6 }), (titres) => {
        const { doubt } = viewOfSlip(but({ titres })).working;
        if (!doubt) throw new Error("no doubt");
        const shares = sharesOf(doubt.bench, false).map(({ percent }) => percent);
        const total = shares.reduce((sum, each) => sum + each, 0);
        expect(total).toBeLessThan(100 + 1e-9);
        expect(total).toBeGreaterThan(100 - 7 * 0.5);
        expect(shares).toEqual([...shares].sort((a, b) => b - a));
      }),
      { numRuns: 50 },
    );
  });
});

describe("a result and its ±", () => {
  it("stand side by side to the same decimals, the ± with two digits", () => {
    expect(withDoubt(exact("1.9746"), 0.1234)).toEqual({ value: "1.97", halfWidth: "0.12" });
    expect(withDoubt(exact("0.6529"), 0.0312)).toEqual({ value: "0.653", halfWidth: "0.031" });
    expect(withDoubt(exact("12.3"), 1.26)).toEqual({ value: "12.3", halfWidth: "1.3" });
    expect(withDoubt(exact("215.53"), 2.304)).toEqual({ value: "215.5", halfWidth: "2.3" });
    expect(withDoubt(exact("2155.3"), 234)).toEqual({ value: "2160", halfWidth: "230" });
    expect(withDoubt(exact("0.05"), 0.000012)).toEqual({
      value: "0.050000",
      halfWidth: "0.000012",
    });
  });
});
