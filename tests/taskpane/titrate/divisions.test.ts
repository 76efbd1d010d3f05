import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { divisionPlot, type Titrated } from "../../../src/taskpane/titrate/picture/divisions";
import { oneDivision } from "../../../src/taskpane/titrate/picture/one-division";
import {
  bandWords,
  divisionWords,
  titresInWords,
} from "../../../src/taskpane/titrate/picture/words";
import { titratedOf } from "../../../src/taskpane/titrate/picture/titrated";
import { but, type Slip, viewOfSlip } from "./slip";

const width = 300;
const edge = 16;

const picture = (slip: Slip) => {
  const found = titratedOf(viewOfSlip(slip));
  if (found === undefined) throw new Error("no titre, no picture");
  return found;
};

const legend = (slip: Slip): string => {
  const { titrated, band, places } = picture(slip);
  const standing = titrated.filter(({ mark }) => mark !== "omitted");
  return bandWords(band, standing.length, places);
};

describe("the picture of the titres on the burette", () => {
  it("keeps dots, band and ticks inside the drawing, with sixteen ticks at most, whatever was typed", () => {
    const value = fc.double({ min: 0.001, max: 999, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(value, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.constantFrom(0, 0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.5, 1),
        (values, reach, step) => {
          const titrated = values.map((each, place): Titrated => {
            return { name: `Titre ${place + 1}`, value: each, mark: "agrees" };
          });
          const [first = 1] = values;
          const band = { from: first - reach, to: first + reach };
          const plot = divisionPlot(titrated, band, step, width, edge);
          const places = [...plot.dots, ...plot.ticks].map(({ x }) => x).concat(plot.band);
          for (const x of places) {
            expect(x).toBeGreaterThanOrEqual(edge - 1e-6);
            expect(x).toBeLessThanOrEqual(width - edge + 1e-6);
          }
          expect(plot.dots).toHaveLength(values.length);
          expect(plot.ticks.length).toBeLessThanOrEqual(17);
          expect(plot.ticks.length).toBeGreaterThan(2);
        },
      ),
    );
  });

  it("has a tick at each division while they are few: 2.40 to 2.55 by 0.05 mL", () => {
    const titrated = [2.4, 2.45, 2.55].map((value): Titrated => {
      return { name: `at ${value}`, value, mark: "agrees" };
    });
    const { divisions, ticks } = divisionPlot(titrated, { from: 2.4, to: 2.55 }, 0.05, width, edge);
    expect(divisions).toBe(1);
    expect(ticks.map(({ label }) => label)).toEqual([
      "2.35",
      "2.40",
      "2.45",
      "2.50",
      "2.55",
      "2.60",
    ]);
  });

  it("shows a titre the moment it stands, and where the next one should fall", () => {
    const one = but({ titres: ["2.40"] });
    expect(picture(one).titrated).toEqual([{ name: "Titre 1", value: 2.4, mark: "not tested" }]);
    // three drops to either side
    expect(legend(one)).toBe("The next titre should lie between 2.25 and 2.55 mL.");
  });

  it("says where the band of those that agree lies, and who is flagged", () => {
    const slip = but({ titres: ["2.30", "2.35", "4.00"] });
    expect(titresInWords(picture(slip).titrated, 2)).toBe(
      "Titre 1 2.30; Titre 2 2.35; Titre 3 4.00, apart, all in mL.",
    );
  });

  it("says where titres should lie, once two agree", () => {
    // by hand: both within 0.15 mL of 2.325
    expect(legend(but({ titres: ["2.30", "2.35"] }))).toMatch(
      /^Titres should lie between 2\.\d\d and 2\.\d\d mL\.$/,
    );
  });

  it("says what one division comes to: 0.05 mL of 0.0998 mol/L on 10 g", () => {
    const slip = but({
      titres: ["2.40"],
      typed: {},
    });
    const found = oneDivision(viewOfSlip(slip));
    // 0.05 x 0.0998 / 10 = 0.000499 mol/kg: x 28.2 = 0.0140718 %; x 56.1053 x 91.5 kg = 2.56 g
    expect(found?.ffa.toNumber()).toBeCloseTo(0.0140718, 12);
    if (found === undefined) throw new Error("mass, strength and step are typed");
    expect(divisionWords(found)).toMatch(
      /^One division, 0\.05 mL, is 0\.014 % FFA: 2\.6 g of pure KOH in 100 L of oil\.$/,
    );
  });

  it("says it of what oil is measured in at this bench", () => {
    const slip = viewOfSlip(but({ titres: ["2.40"], typed: {} }));
    const words = (unit: string): string => {
      const found = oneDivision(slip, unit);
      if (found === undefined) throw new Error("mass, strength and step are typed");
      return divisionWords(found);
    };
    // 0.000499 mol/kg x 56.1053 = 0.0279965 g/kg; 25 US gal are 86.591 kg, 200 lb 90.718 kg
    expect(words("US gal")).toContain("2.4 g of pure KOH in 25 US gal of oil.");
    expect(words("lb")).toContain("2.5 g of pure KOH in 200 lb of oil.");
    // 20 imperial gal are 83.193 kg
    expect(words("imperial gal")).toContain("2.3 g of pure KOH in 20 imperial gal of oil.");
    expect(words("")).toContain("in 100 L of oil.");
  });

  it("says nothing of the dose while mass, strength or step are missing", () => {
    for (const typed of [{ mass: "" }, { titreStep: "" }]) {
      expect(oneDivision(viewOfSlip(but({ titres: ["2.40"], typed })))).toBeUndefined();
    }
  });
});
