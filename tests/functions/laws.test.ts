import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, figure } from "./outcome";

/** A figure as a bench would write it: whole hundredths. */
const hundredths = (from: number, to: number) =>
  fc.integer({ min: Math.round(from * 100), max: Math.round(to * 100) }).map((n) => n / 100);

const near = (a: number, b: number, relative = 1e-12): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)));
};

const titre = hundredths(1, 20);
const strength = hundredths(0.05, 0.5);
const mass = hundredths(5, 30);
const value = hundredths(0.1, 9);
const kilograms = hundredths(1, 5000);
const assay = hundredths(80, 100);
const charge = hundredths(0.2, 1.5);
const baseName = fc.constantFrom("KOH", "NaOH", "KOCH3", "NaOCH3");
const molarMass: Record<string, number> = {
  KOH: 56.1053,
  NaOH: 39.99676928,
  KOCH3: 70.1323,
  NaOCH3: 54.02376928,
};

describe("laws of the titration", () => {
  it("doubling titre and sample leaves the acid value as it was", () => {
    fc.assert(
      fc.property(titre, strength, mass, (v, c, m) => {
        near(figure("ACIDVALUE", 2 * v, c, 2 * m), figure("ACIDVALUE", v, c, m));
      }),
    );
  });

  it("acid value is proportional to the titre, to the strength, and inverse in the sample", () => {
    fc.assert(
      fc.property(titre, strength, mass, (v, c, m) => {
        const one = figure("ACIDVALUE", v, c, m);
        near(figure("ACIDVALUE", 3 * v, c, m), 3 * one);
        near(figure("ACIDVALUE", v, 2 * c, m), 2 * one);
        near(figure("ACIDVALUE", v, c, 4 * m), one / 4);
      }),
    );
  });

  it("the percentage by titration is the percentage by way of the acid value", () => {
    const acid = fc.constantFrom("oleic", "lauric", "palmitic", "linoleic", 300);
    fc.assert(
      fc.property(titre, strength, mass, acid, (v, c, m, name) => {
        near(
          figure("FFAPERCENT", v, c, m, name),
          figure("FFAFROMACIDVALUE", figure("ACIDVALUE", v, c, m), name),
        );
      }),
    );
  });

  it("acid value to percentage and back is where it started", () => {
    fc.assert(
      fc.property(value, fc.constantFrom("oleic", "erucic", "stearic"), (av, acid) => {
        near(figure("ACIDVALUEFROMFFA", figure("FFAFROMACIDVALUE", av, acid), acid), av);
      }),
    );
  });

  it("the order of replicates, and gaps between them, do not matter", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(titre, mass), { minLength: 1, maxLength: 6 }),
        fc.array(hundredths(0.05, 0.5), { minLength: 1, maxLength: 3 }),
        strength,
        fc.integer({ min: 0, max: 5 }),
        (runs, blanks, c, gap) => {
          const titres: (number | null)[] = runs.map(([v]) => v);
          const masses: (number | null)[] = runs.map(([, m]) => m);
          const one = figure("MEANACIDVALUE", [titres], [blanks], c, [masses]);
          const [turnedTitres, turnedMasses] = [[...titres].reverse(), [...masses].reverse()];
          turnedTitres.splice(gap, 0, null);
          turnedMasses.splice(gap, 0, null);
          const down = turnedTitres.map((v) => [v]);
          near(figure("MEANACIDVALUE", down, [[...blanks].reverse()], c, [turnedMasses]), one);
        },
      ),
    );
  });

  it("one mass for all is the same as that mass for each, and as the corrected titre's acid value", () => {
    fc.assert(
      fc.property(
        fc.array(titre, { minLength: 1, maxLength: 6 }),
        mass,
        strength,
        (titres, m, c) => {
          const one = figure("MEANACIDVALUE", [titres], [[0.2]], c, [[m]]);
          near(figure("MEANACIDVALUE", [titres], [[0.2]], c, [titres.map(() => m)]), one);
          near(figure("ACIDVALUE", figure("CORRECTED", [titres], [[0.2]]), c, m), one);
        },
      ),
    );
  });

  it("the mass to weigh for a titrant brings back its strength", () => {
    fc.assert(
      fc.property(strength, hundredths(0.1, 5), baseName, assay, (c, litres, base, percent) => {
        const grams = figure("TITRANTMASS", c, litres, base, percent);
        near(figure("MOLARITY", grams, litres, base, percent), c);
      }),
    );
  });

  it("the suggested sample brings the titre it was asked for", () => {
    fc.assert(
      fc.property(hundredths(0.2, 10), strength, titre, (ffa, c, target) => {
        const grams = figure("SAMPLETOWEIGH", ffa, c, target);
        fc.pre(grams <= 1000);
        near(figure("FFAPERCENT", target, c, grams), ffa);
      }),
    );
  });
});

describe("laws of the batch", () => {
  it("the dose is proportional to the oil and inverse in the assay", () => {
    fc.assert(
      fc.property(kilograms, value, baseName, assay, charge, (kg, av, base, percent, share) => {
        const one = figure("CATALYST", kg, av, base, percent, share);
        near(figure("CATALYST", 2 * kg, av, base, percent, share), 2 * one);
        near(figure("CATALYST", kg, av, base, percent / 2, share), 2 * one);
      }),
    );
  });

  it("the dose rises with the acid value", () => {
    fc.assert(
      fc.property(kilograms, value, baseName, charge, (kg, av, base, share) => {
        const more = figure("CATALYST", kg, av + 0.01, base, 100, share);
        expect(more).toBeGreaterThan(figure("CATALYST", kg, av, base, 100, share));
      }),
    );
  });

  it("another base for the acid is the same number of moles", () => {
    fc.assert(
      fc.property(kilograms, value, baseName, baseName, (kg, av, a, b) => {
        const moles = (name: string) =>
          figure("NEUTRALISER", kg, av, name, 100) / (molarMass[name] ?? NaN);
        near(moles(a), moles(b));
      }),
    );
  });

  it("DOSE is MEANACIDVALUE and then CATALYST", () => {
    fc.assert(
      fc.property(
        fc.array(hundredths(1, 6), { minLength: 1, maxLength: 5 }),
        kilograms,
        baseName,
        assay,
        charge,
        (titres, kg, base, percent, share) => {
          const bench = [[titres], [[0.15]], 0.1, [[12.5]]];
          const dose = call("DOSE", ...bench, kg, base, percent, share);
          const av = figure("MEANACIDVALUE", ...bench);
          const chained = call("CATALYST", kg, av, base, percent, share);
          if (!("value" in dose) || !("value" in chained)) {
            expect(dose).toEqual(chained);
            return;
          }
          near(Number(dose.value), Number(chained.value));
        },
      ),
    );
  });

  it("litres, gallons of both kinds, millilitres, kilograms and pounds agree on the same oil", () => {
    fc.assert(
      fc.property(hundredths(1, 1000), hundredths(0.85, 0.95), (litres, density) => {
        const kg = figure("OILMASS", litres, "l", density);
        near(figure("OILMASS", litres / 3.785411784, "us_gal", density), kg);
        near(figure("OILMASS", litres / 4.54609, "uk_gal", density), kg);
        near(figure("OILMASS", litres * 1000, "ml", density), kg);
        near(figure("OILMASS", kg, "kg"), kg);
        near(figure("OILMASS", kg * 1000, "g"), kg);
        near(figure("OILMASS", kg / 0.45359237, "lb"), kg);
      }),
    );
  });

  it("a blend made to a fraction has the target acid value", () => {
    fc.assert(
      fc.property(value, value, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        fc.pre(a !== b);
        const target = b + (a - b) * share;
        fc.pre(target > Math.min(a, b) && target < Math.max(a, b));
        const x = figure("BLEND", a, b, target);
        fc.pre(x > 1e-6 && x < 1 - 1e-6);
        near(figure("BLENDEDACIDVALUE", [[a, b]], [[x, 1 - x]]), target, 1e-9);
      }),
    );
  });

  it("an acid value exactly at the limit passes, in whichever way it was computed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (limit) => {
        const computed = (limit * 561) / 282;
        expect(call("CATALYST", 100, computed, "KOH", 90, 1, limit)).toHaveProperty("value");
        const above = computed * (1 + 1e-6);
        expect(call("CATALYST", 100, above, "KOH", 90, 1, limit)).toHaveProperty(
          "error",
          "#VALUE!",
        );
      }),
    );
  });
});
