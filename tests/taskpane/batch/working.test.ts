import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { saidOfTitrant } from "../../../src/taskpane/batch/same-lye";
import { acidStepLines, waterInAll, weighOutOf } from "../../../src/taskpane/batch/weigh-out";
import { but, seen, sentences, type Slate, whole } from "./slate";

const catalyst = (slate: Slate): number => {
  const { batch } = seen(slate).working;
  if (!batch || isProblem(batch)) throw new Error("no dose");
  return batch.catalyst.toNumber();
};
const acidOf = (slate: Slate): number => {
  const { mix } = seen(slate).working;
  if (!mix || isProblem(mix)) throw new Error("no acid");
  return mix.acidValue.toNumber();
};
const lines = (slate: Slate, mark: "." | "," = ".") => weighOutOf(seen(slate, mark));

describe("the weigh-out of a batch", () => {
  // By hand: 91.5 kg x (5 / 56.1 x 56.1053 + 7.65) / 0.9 = 1286.13 g;
  // acid part 91.5 x 5.000472... / 0.9 = 508.38 g, x 0.1 / 2.51337 = 20.23 g.
  it("shows the lye with its interval from the titration", () => {
    expect(catalyst(whole)).toBeCloseTo((91.5 * ((5 / 56.1) * 56.1053 + 7.65)) / 0.9, 9);
    expect(lines(whole).at(-1)).toMatchObject({
      what: "KOH, 90 %",
      figure: "1286",
      unit: "g",
      // By hand: 1286.13 g / 90 = 14.29 g.
      also: [
        "1286 g ± 20 g from the titration.",
        "If the lye is 1 % weaker than its label, about 14 g more.",
      ],
    });
  });

  it("writes decimals as this person does, and no mark between thousands", () => {
    expect(lines(whole, ",").at(-1)?.figure).toBe("1286");
    // By hand: 100 L at 0.915 kg/L.
    expect(lines(whole, ",")[0]).toMatchObject({ what: "Oil, lot A", figure: "91,50" });
  });

  it("says so when the titration has no ±", () => {
    expect(lines(but({ lots: ["F"] })).at(-1)?.also[0]).toBe(
      "Its uncertainty is not known: the titration has no ±.",
    );
  });

  // By hand, 91.5 kg: acid 91.5 x 5/56.1 x 18.015 g = 0.147 kg; 699.98 g x 18.015/56.1053 = 0.225 kg;
  // lye 1286.13 g x 0.1 = 0.129 kg; oil 91.5 x 0.0006 = 0.055 kg; 0.555 kg in all, 0.61 %.
  it("counts the water that acid, base and lye bring beside the oil's own", () => {
    expect(waterInAll(seen(but({ typed: { water: "0.06" } })))).toBe(
      "Water in all, at most 0.555 kg or 0.61 % of the oil: 0.055 kg in the oil, 0.147 kg from the acid, 0.225 kg from base and methanol, 0.129 kg in the lye.",
    );
    expect(waterInAll(seen(whole))).toContain(
      "0.500 kg or 0.55 % of the oil: the oil’s own not measured",
    );
    expect(waterInAll(seen(but({ typed: { water: "0.06" } }), ","))).toContain(
      "0,555 kg or 0,61 %",
    );
  });

  it("gives pounds and ounces on request only", () => {
    expect(JSON.stringify(lines(whole))).not.toContain("oz");
    // By hand: 1286.13 g is 45.367 oz: 2 lb 13.4 oz.
    expect(lines(but({ picked: { pounds: "yes" } })).at(-1)?.also[0]).toBe("2 lb 13.4 oz");
  });

  it("says weights as they were picked, in whichever unit the oil is measured", () => {
    const units = ["l", "kg", "us_gal", "uk_gal", "lb"] as const;
    const hasOunces = (picked: Slate["picked"]) =>
      lines(but({ picked: picked ?? {} })).map(({ also }) =>
        also.some((each) => / oz$/.test(each)),
      );
    for (const unit of units) {
      // oil and lye; methanol is measured
      expect(hasOunces({ unit, pounds: "yes" })).toEqual([true, false, true]);
      expect(hasOunces({ unit, pounds: "no" })).toEqual([false, false, false]);
    }
    // nobody picked: as the oil is measured
    expect(units.map((unit) => hasOunces({ unit })[0])).toEqual([false, false, true, true, true]);
  });

  it("shows shares of lots that add up to a hundred", () => {
    const shares = lines(but({ lots: ["A", "B"], shares: { A: "76.05" } }))
      .flatMap(({ also }) => also)
      .filter((words) => words.endsWith("% of the mass"));
    expect(shares).toEqual(["76.1 % of the mass", "23.9 % of the mass"]);
  });

  it("takes every unit, and no gallon without its country", () => {
    // By hand: 20 US gallons of 3.785411784 L, 20 imperial of 4.54609 L, each at 0.915 kg/L; 200 lb.
    const mass = (unit: "us_gal" | "uk_gal" | "lb" | "kg", amount: string): string =>
      line(unit, amount, 0)?.figure ?? "";
    const line = (unit: "us_gal" | "uk_gal" | "lb" | "kg", amount: string, at: number) =>
      lines(but({ typed: { amount }, picked: { unit } }))[at];
    // gallons go in and gallons come out, with the kilograms and the pounds beside them
    expect(line("us_gal", "20", 0)).toMatchObject({
      figure: "20.00",
      unit: "US gal",
      also: ["69.27 kg", "152 lb 11.5 oz"],
    });
    expect(line("uk_gal", "20", 0)?.also[0]).toBe("83.19 kg");
    expect(line("us_gal", "20", 1)?.unit).toBe("US gal at 20 °C");
    const [gallons, litres] = [line("us_gal", "20", 1), line("us_gal", "20", 1)?.also[0]];
    expect(Number(gallons?.figure) * 3.785411784).toBeCloseTo(parseFloat(litres ?? ""), 1);
    // as on the bench card: who weighs in pounds measures in gallons
    expect(line("lb", "200", 1)?.unit).toBe("US gal at 20 °C");
    expect(line("kg", "200", 1)?.unit).toBe("L at 20 °C");
    expect(mass("lb", "200")).toBe("90.72");
    expect(mass("kg", "91.5")).toBe("91.50");
  });

  it("corrects a hot volume", () => {
    // By hand: 0.915 - 25 x 0.00066 = 0.8985 kg/L.
    expect(lines(but({ typed: { temperature: "45" } }))[0]?.figure).toBe("89.85");
  });

  it("takes a charge in either unit, pure or as weighed", () => {
    const charge = (slate: Slate): number => {
      const found = seen(slate).working.charge;
      if (!found || isProblem(found)) throw new Error("no charge");
      return found.toNumber();
    };
    const perLitre = { typed: { chargeGrams: "7" }, picked: { chargeUnit: "g/L" } } as const;
    expect(charge(but({ picked: { chargeIs: "as weighed" } }))).toBeCloseTo(0.6885, 12);
    expect(charge(but(perLitre))).toBeCloseTo(0.7 / 0.915, 12);
    const asWeighed = { ...perLitre.picked, chargeIs: "as weighed" } as const;
    expect(charge(but({ ...perLitre, picked: asWeighed }))).toBeCloseTo(0.63 / 0.915, 12);
  });

  it("takes methanol by volume", () => {
    // Facts of the trade: 20 % by volume of an oil taken as triolein is 4.780 to 1.
    const { ratio } = seen(
      but({ typed: { volumePercent: "20" }, picked: { methanolBy: "volume" } }),
    ).working;
    expect(isProblem(ratio) ? 0 : ratio?.toNumber()).toBeCloseTo(4.78, 3);
  });

  it("takes off the methanol of a methoxide solution", () => {
    const line = lines(
      but({
        typed: { assay: "30", chargePercent: "0.5" },
        picked: { base: "NaOCH3", chargeIs: "pure" },
      }),
    )[1];
    expect(line?.what).toBe("Methanol to add");
    expect(line?.also[0]).toMatch(/less the .* L that the methoxide solution brings/);
  });
});

describe("above the allowed acid", () => {
  // By hand: AV 20 is 20 x 282 / 561 = 10.05 % FFA.
  const sour = but({ lots: ["C"] });

  it("shows no dose until a higher limit is typed", () => {
    expect(isProblem(seen(sour).working.batch)).toBe(true);
    expect(lines(sour)).toEqual([]);
    expect(lines(but({ lots: ["C"], typed: { limit: "10" } }))).toEqual([]);
    expect(lines(but({ lots: ["C"], typed: { limit: "10.06" } }))).not.toEqual([]);
  });

  it("shows a dose and the acid step where the acid is the limit itself", () => {
    // AV 5 is 2.5133689... % FFA; the limit allows 1e-9 either way.
    const edge = but({ typed: { limit: "2.51336898396" } });
    expect(lines(edge)).not.toEqual([]);
    expect(seen(edge).working.acidStep?.advised).toBe("first");
  });

  // Canakci and Van Gerpen 2001, commonly cited: 2.25 g of methanol and 0.05 g of acid per g of FFA.
  it("offers the amounts of an acid step when the route asks for one", () => {
    const ffa = (91.5 * 20 * 282.468) / 56.1 / 1000;
    const found = acidStepLines(seen(sour)).map(({ figure }) => Number(figure));
    expect(found[0]).toBeCloseTo(ffa, 2);
    expect(found[1]).toBeCloseTo((ffa * 2.25) / 0.7914, 1);
    expect(found[2]).toBeCloseTo((ffa * 0.05) / 0.96, 3);
    expect(acidStepLines(seen(whole))).toEqual([]);
  });
});

describe("lots mixed", () => {
  it("have the acid of their shares", () => {
    expect(acidOf(but({ lots: ["A", "B"], shares: { A: "60" } }))).toBeCloseTo(3.4, 12);
    expect(acidOf(but({ lots: ["A", "B", "C"], shares: { A: "50", B: "40" } }))).toBeCloseTo(
      4.9,
      12,
    );
  });

  it("are brought to a target by a share rounded towards less acid, and never exceed it", () => {
    const target = { lots: ["A", "B"], picked: { mixedBy: "target" } } as const;
    // By hand: 1 % FFA is AV 1.98936; (1.98936 - 5) / (1 - 5) = 75.27 % of B, so 75.3 %.
    const slate = but({ ...target, typed: { target: "1" } });
    expect(lines(slate)[1]?.also[0]).toBe("75.3 % of the mass");
    fc.assert(
      fc.property(fc.integer({ min: 51, max: 251 }), fc.boolean(), (hundredths, isSwapped) => {
        const lots = isSwapped ? ["B", "A"] : ["A", "B"];
        const typed = { target: String(hundredths / 100) };
        const acid = acidOf(but({ ...target, lots, typed }));
        expect((acid * 282) / 561).toBeLessThanOrEqual((hundredths / 100) * (1 + 1e-12));
      }),
    );
  });

  it("say in % FFA why they do not meet a target", () => {
    const slate = but({ lots: ["A", "B"], picked: { mixedBy: "target" }, typed: { target: "4" } });
    expect(sentences(seen(slate))).toContain(
      "These two lots mix to between 0.50 and 2.51 % FFA, never to 4.00 %.",
    );
  });

  it("carry the doubt of each by its share", () => {
    const { mix } = seen(but({ lots: ["A", "B"], shares: { A: "60" } })).working;
    // by hand: 0.1 x sqrt(0.6^2 + 0.4^2), nothing in common
    expect(isProblem(mix) ? 0 : mix?.halfWidth).toBeCloseTo(0.0721110255, 9);
  });

  it("leave something for the last lot, or say that nothing is left", () => {
    const slate = but({ lots: ["A", "B", "C"], shares: { A: "60", B: "45" } });
    expect(sentences(seen(slate))).toContain(
      "The shares come to 105 %: nothing is left for the last lot.",
    );
  });
});

describe("a titrant of the same lye", () => {
  const same = { picked: { titrantLye: "same" } } as const;

  it("taken as pure has its assay put in, so that the acid part as weighed knows no assay", () => {
    expect(acidOf(but({ ...same, lots: ["D"] }))).toBeCloseTo(4.5, 12);
    expect(catalyst(but({ ...same, lots: ["D"] }))).toBeCloseTo(
      91.5 * ((5 / 56.1) * 56.1053 + 7.65 / 0.9),
      9,
    );
  });

  it("changes nothing where the titration knew its strength", () => {
    expect(catalyst(but(same))).toBe(catalyst(whole));
  });

  it("is told as one lye only where the lots do not say otherwise", () => {
    const said = (slate: Slate) => {
      const { draft, recorded } = seen(slate);
      return saidOfTitrant(draft, recorded);
    };
    expect(said(but({ ...same, lots: ["A"] }))?.words).toMatch(/^One lye in burette and vessel/);
    expect(said(but({ ...same, lots: ["E"] }))).toEqual({
      tone: "check",
      words:
        "Lot E was titrated with NaOH, and this lye is KOH: they are not the same lye. Pick Other lye above.",
    });
    expect(said(but({ lots: ["A"] }))).toBeUndefined();
  });

  it("cannot be another base, nor hold for one lot of two", () => {
    expect(sentences(seen(but({ ...same, lots: ["E"] })))).toContain(
      "Lot E was titrated with NaOH, and this lye is KOH: they are not the same lye.",
    );
    const two = but({ ...same, lots: ["A", "D"], shares: { A: "50" } });
    expect(sentences(seen(two)).join(" ")).toContain("put the assay into its titration first");
  });
});

describe("what is still wanted", () => {
  const lacking: readonly (readonly [Slate, string])[] = [
    [but({ lots: [] }), "Choose a lot."],
    [but({ lots: ["Z"] }), "Lot Z is not in the table Titrations any more."],
    [but({ lots: ["G"] }), "Lot G: not titrated yet."],
    [but({ lots: ["I"] }), "“whale” of lot I is no oil known here: put it right in its row."],
    [but({ typed: { amount: "" } }), "Fill in Amount of oil."],
    [but({ lots: ["A", "B"] }), "Fill in the share of lot A."],
    [but({ typed: { assay: "" } }), "Fill in Assay of the lye."],
    [but({ typed: { chargePercent: "" } }), "Fill in Base charge."],
    [but({ picked: { chargeIs: "" } }), "Is the base charge pure base, or lye as weighed?"],
    [but({ typed: { limit: "" } }), "Fill in Allowed acid."],
    [but({ typed: { ratio: "" } }), "Fill in Methanol: moles to 1 of oil."],
    [but({ batch: " " }), "Fill in Batch."],
  ];
  it.each(lacking)("is said (%#)", (slate, sentence) => {
    expect(sentences(seen(slate))).toContain(sentence);
  });

  it("is a warm volume of a fat that is solid", () => {
    expect(sentences(seen(but({ lots: ["H"] }))).join(" ")).toContain("tallow is solid at 20 C");
    expect(sentences(seen(but({ lots: ["H"], typed: { temperature: "50" } })))).toEqual([]);
  });

  it("is nothing for a whole batch, also one of a lot whose mark is a number", () => {
    expect(sentences(seen(whole))).toEqual([]);
    expect(sentences(seen(but({ lots: ["41"] })))).toEqual([]);
  });

  it("says that a charge or a ratio comes out of range", () => {
    const much = but({ typed: { chargePercent: "4" } });
    expect(sentences(seen(much)).join(" ")).toContain("The base charge comes to 4 % pure base");
    const thin = but({ typed: { volumePercent: "5" }, picked: { methanolBy: "volume" } });
    expect(sentences(seen(thin)).join(" ")).toContain("The methanol comes to 1.2 to 1");
  });
});

describe("a dose", () => {
  const figure = fc.integer({ min: 1, max: 4000 });

  it("is linear in the oil, and the same by litre, gallon and kilogram", () => {
    fc.assert(
      fc.property(figure, (tenths) => {
        const kilograms = tenths / 10;
        const one = catalyst(but({ typed: { amount: "1" }, picked: { unit: "kg" } }));
        const many = catalyst(
          but({ typed: { amount: String(kilograms) }, picked: { unit: "kg" } }),
        );
        expect(Math.abs(many - kilograms * one)).toBeLessThanOrEqual(1e-12 * many);
        const litres = catalyst(but({ typed: { amount: String(tenths) }, picked: { unit: "l" } }));
        const gallons = String(Number((tenths / 3.785411784).toPrecision(15)));
        const byGallon = catalyst(but({ typed: { amount: gallons }, picked: { unit: "us_gal" } }));
        expect(Math.abs(litres - byGallon)).toBeLessThanOrEqual(1e-12 * litres);
      }),
      { numRuns: 25 },
    );
  });

  it("is inverse in the assay", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 100 }), (assay) => {
        const at = catalyst(but({ typed: { assay: String(assay) } }));
        const pure = catalyst(but({ typed: { assay: "100" } }));
        expect(Math.abs((at * assay) / 100 - pure)).toBeLessThanOrEqual(1e-12 * pure);
      }),
    );
  });

  it.each([
    ["0.001", "l"],
    ["100000", "l"],
  ] as const)("is shown for %s %s", (amount, unit) => {
    const figure = lines(but({ typed: { amount }, picked: { unit } })).at(-1)?.figure;
    // By hand: 12.8613 g for a litre.
    const shown = Number(figure) / (12.8613 * Number(amount));
    expect(Math.abs(shown - 1)).toBeLessThan(0.001);
  });
});
