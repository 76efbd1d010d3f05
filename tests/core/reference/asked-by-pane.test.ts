/** What only the pane asks of the core: here it is asked by hand. */
import { describe, expect, it } from "vitest";
import { halfSolidWords } from "../../../src/core/batch/half-solid";
import { quantity } from "../../../src/core/quantity/quantity";
import { amountUnitNames, offeredUnitNames } from "../../../src/core/quantity/units";
import { isProblem } from "../../../src/core/problem/problem";
import { squaresOfTitres } from "../../../src/core/record/usual-scatter";
import { endPoints } from "../../../src/core/reference/end-points";
import { fuelEditions } from "../../../src/core/reference/fuel-limits";
import { oils } from "../../../src/core/reference/oils";
import { blankShare, blankShareWorthSaying } from "../../../src/core/titration/corrected-titre";
import { stageNames, stages } from "../../../src/core/titration/stages";

const mL = (...values: string[]) => values.map((each) => quantity("mL", each));

describe("what the pane alone asks of the core", () => {
  it("is the methods behind an end point, the editions of the standards, the stages of an oil", () => {
    expect(endPoints).toEqual([
      { seconds: 15, asked: "ISO 660, EN 14104, ASTM D974" },
      { seconds: 30, asked: "AOCS Ca 5a-40" },
    ]);
    expect(fuelEditions).toEqual({ astm: "ASTM D6751 (2009)", en: "EN 14214:2012+A1:2014" });
    expect(stageNames).toEqual(["as received", "dried", "after acid step", "blend"]);
    expect(Object.values(stages)).toEqual(["As received", "Dried", "After acid step", "Blend"]);
  });

  it("is the units in a sentence", () => {
    expect(amountUnitNames).toBe("l, ml, us_gal, uk_gal, g, kg or lb");
    expect(offeredUnitNames).toBe("l, kg, us_gal, uk_gal or lb");
  });

  it("is a word about fryer oil below 15 C, which may be half solid, and about no other oil", () => {
    const [fryer, canola] = ["used cooking oil", "canola"].map((name) =>
      oils.find((oil) => oil.name === name),
    );
    if (!fryer || !canola) throw new Error("an oil is missing");
    expect(halfSolidWords(fryer, quantity("C", "14.9"))).toMatch(/^Used cooking oil at 14\.9 °C/);
    expect(halfSolidWords(fryer, quantity("C", "15"))).toBeUndefined();
    expect(halfSolidWords(fryer, undefined)).toBeUndefined();
    expect(halfSolidWords(canola, quantity("C", "5"))).toBeUndefined();
  });

  // By hand: a blank of 0.15 beside a mean of 2.5, and beside 0.65/3; a third is worth a word.
  it("is the mean blank as a share of the mean titre", () => {
    expect(blankShare(mL("2.4", "2.6"), mL("0.1", "0.2")).toNumber()).toBe(0.06);
    expect(blankShare(mL("0.20", "0.25", "0.20"), mL("0.15")).toFixed(4)).toBe("0.6923");
    expect(blankShare(mL("2.4"), []).toNumber()).toBe(0);
    expect(blankShareWorthSaying.toFixed(4)).toBe("0.3333");
  });

  // By hand: 2.4, 2.5, 2.45 lie 0.05, 0.05 and 0 from their mean; on twice the mass half the net titre.
  it("is how the titres of one titration scatter, without its blanks", () => {
    const of = (samples?: readonly (readonly [string, string])[]) => {
      const found = squaresOfTitres({
        titres: mL("2.4", "2.5", "2.45"),
        blanks: mL("0.1", "0.3"),
        samples: samples?.map(([titre, mass]) => [quantity("mL", titre), quantity("g", mass)]),
      });
      return isProblem(found) ? found.fields.code : [found.squares.toFixed(9), found.freedom];
    };
    expect(of()).toEqual(["0.005000000", 2]);
    // net of 0.2: 2.2 on 7 g and 4.4 on 14 g are the same
    expect(
      of([
        ["2.4", "7"],
        ["4.6", "14"],
      ]),
    ).toEqual(["0.000000000", 1]);
    const below = squaresOfTitres({ titres: mL("0.1"), blanks: mL("0.2"), samples: undefined });
    expect(isProblem(below)).toBe(true);
  });
});
