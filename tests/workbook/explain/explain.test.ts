import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";
import { catalogue } from "../../../src/functions/catalogue";
import {
  type CallExplanation,
  explainFormula,
  type Lookup,
} from "../../../src/workbook/explain/explain";
import { workedOut } from "./arithmetic";

const nowhere: Lookup = () => undefined;

function explained(text: string, lookup: Lookup = nowhere): readonly CallExplanation[] {
  const calls = explainFormula(text, lookup);
  if (isProblem(calls)) throw new Error(say(calls));
  return calls;
}

function first(text: string, lookup?: Lookup): CallExplanation {
  const [call] = explained(text, lookup);
  if (!call) throw new Error(`${text} has no call`);
  return call;
}

const shownOf = (call: CallExplanation): Record<string, string> =>
  Object.fromEntries(call.arguments.map(({ name, shown }) => [name, shown]));

/** Lots of the sample scenario, as a sheet would hand them over. */
const sheet: Record<string, unknown[][]> = {
  "A1:A3": [[2.4], [2.5], [""]],
  B1: [[0.15]],
  B2: [[""]],
  "Titrations[@[Mass g]]": [[7.05]],
  C1: [["caustic potash"]],
  D1: [["n/a"]],
  E1: [[{ type: "Error", basicValue: "#DIV/0!" }]],
  F1: [[{ type: "Double", basicValue: 0.1 }]],
};
const onSheet: Lookup = (text) => sheet[text];

describe("explaining a cell", () => {
  it("gives the function, each argument as written and as it stands, and the answer", () => {
    const call = first("=TITRE.CORRECTED(A1:A3,B1)*1", onSheet);
    expect(call.id).toBe("CORRECTED");
    expect(call.written).toBe("TITRE.CORRECTED(A1:A3,B1)");
    expect(call.entry?.summary).toBe("Corrected titre: mean titre less mean blank, mL.");
    expect(call.arguments.map(({ written }) => written)).toEqual(["A1:A3", "B1"]);
    expect(shownOf(call)).toEqual({ titres: "2.4, 2.5, empty", blanks: "0.15" });
    expect(call.arguments[0]).toMatchObject({ unit: "mL", allowed: "above 0, up to 1000 mL" });
    // by hand: (2.4 + 2.5) / 2 - 0.15
    expect(call.answer).toBe(2.3);
  });

  it("says nothing of a function that is only asked whether it is known: that is no part of the cell's words", () => {
    const worth =
      '=IF(ISNUMBER(A1),"Good",IF(ISERROR(TITRE.FFAFROMACIDVALUE(1)),"no add-in","a reading"))';
    expect(explained(worth, onSheet)).toEqual([]);
    // what is asked of the row's own cells is
    const asked = "=IF(ISERROR(TITRE.CORRECTED(A1:A3,B1)),0,1)";
    expect(explained(asked, onSheet).map(({ id }) => id)).toEqual(["CORRECTED"]);
  });

  it("takes brackets around a call and around its arguments for what they are", () => {
    const call = first("=((TITRE.CORRECTED((A1:A3),((B1)))))/2", onSheet);
    expect(call.written).toBe("TITRE.CORRECTED((A1:A3),((B1)))");
    expect(call.arguments.map(({ written }) => written)).toEqual(["A1:A3", "B1"]);
    // by hand: (2.4 + 2.5) / 2 - 0.15
    expect(call.answer).toBe(2.3);
  });

  it("puts the present figures into the equation, with words as the figures they stand for", () => {
    const call = first(
      "=_xldudf_TITRE_DOSE(A1:A3,B1,F1,Titrations[@[Mass g]],100,C1,90,0.765)",
      onSheet,
    );
    expect(call.equation).toBe(
      "(oilMass × molarity × mean((titres − mean(blanks)) ÷ sampleMasses) × base + 10 × oilMass × baseCharge) ÷ (assayPercent ÷ 100)",
    );
    expect(call.worked).toBe(
      "(100 × 0.1 × mean(({2.4, 2.5} − mean(0.15)) ÷ 7.05) × 56.1053 + 10 × 100 × 0.765) ÷ (90 ÷ 100)",
    );
  });

  it("says what leaving an argument out means, and uses it in the equation", () => {
    const ffa = first("=TITRE.FFAPERCENT(10,0.1,28.2)");
    expect(shownOf(ffa).fattyAcid).toBe("left out: oleic");
    expect(ffa.worked).toBe("0.1 × 10 × 282 ÷ (10 × 28.2)");
    const methanol = first("=TITRE.METHANOL(100)");
    expect(methanol.worked).toBe("100 × (1 − 0 ÷ 56.1 × 0.282468) × 6 × 32.042 ÷ 885.453 ÷ 0.7914");
    expect(first('=TITRE.CORRECTED(2.4,"neutralised")').worked).toBe("mean(2.4) − 0");
    expect(first("=TITRE.CORRECTED(2.4)").worked).toBe("mean(2.4) − 0");
  });

  it("shows an optional argument given as an empty cell as left out, and empty blanks as empty", () => {
    expect(shownOf(first("=TITRE.FFAPERCENT(10,0.1,28.2,B2)", onSheet)).fattyAcid).toBe(
      "left out: oleic",
    );
    const call = first("=TITRE.CORRECTED(2.4,B2)", onSheet);
    expect(shownOf(call).blanks).toBe("empty");
    expect(call.problem).toEqual({
      shows: "#N/A",
      says: "No blank yet: titrate one, or type neutralised.",
    });
  });

  it("shows figures with six significant digits and a true minus sign", () => {
    const call = first('=TITRE.TEMPERATURECORRECTED(10.123456789,28,-5,"water")');
    expect(shownOf(call)).toMatchObject({ titre: "10.1235", setAt: "−5" });
    expect(call.worked).toBe("10.1235 × (1 − 0.00021 × (28 − (−5)))");
  });

  it("uses the density of the oil at its temperature, and none for an amount by mass", () => {
    expect(first('=TITRE.SAMPLEGRAMS(5,"canola",25)').worked).toBe("5 × 0.9121");
    expect(first('=TITRE.OILMASS(20,"us_gal",0.92)').worked).toBe("20 × 3.78541 × 0.92");
    expect(first('=TITRE.OILMASS(50,"lb","tallow")').worked).toBe("50 × 0.453592");
  });

  it("explains calls inside calls, the outer one first, each with its own answer", () => {
    const calls = explained("=1+TITRE.FFAFROMACIDVALUE(TITRE.ACIDVALUE(2.3,0.1,10))");
    expect(calls.map(({ id }) => id)).toEqual(["FFAFROMACIDVALUE", "ACIDVALUE"]);
    // by hand: 56.1 x 0.1 x 2.3 / 10, then x 282 / 561
    expect(calls.map(({ answer }) => answer)).toEqual([0.6486, 1.2903]);
    expect(shownOf(calls[0] as CallExplanation).acidValue).toBe("1.2903");
  });

  it("leaves other arithmetic to the sheet, and shows its text where its value is not known", () => {
    const call = first("=TITRE.ACIDVALUE(B9*0.9,0.1,C9)", onSheet);
    expect(call.answer).toBeUndefined();
    expect(call.problem).toBeUndefined();
    expect(call.worked).toBe("56.1 × 0.1 × (B9*0.9) ÷ C9");
    expect(call.arguments.map(({ isKnown }) => isKnown)).toEqual([false, true, false]);
    const known = first("=TITRE.ACIDVALUE(B9*0.9,0.1,10)", (text) =>
      text === "B9*0.9" ? [[2.3]] : undefined,
    );
    expect(known.answer).toBe(1.2903);
  });

  it("gives the sentence of a problem, marks the argument, and suggests no figure", () => {
    const call = first("=TITRE.ACIDVALUE(D1,0.1,10)", onSheet);
    expect(call.problem?.shows).toBe("#VALUE!");
    expect(call.problem?.says).toMatch(/correctedTitre must be a number/);
    expect(call.arguments[0]?.problem).toBe(call.problem?.says);
    expect(call.worked).toBeUndefined();
    expect(call.answer).toBeUndefined();
    const limit = first('=TITRE.CATALYST(100,50,"KOH",90,0.7)');
    expect(limit.problem?.says).toMatch(/above the limit of 5 %/);
    expect(limit.worked).toBeUndefined();
  });

  it("passes the error of an inner call and of a cell on, as the sheet does", () => {
    expect(first("=TITRE.FFAFROMACIDVALUE(TITRE.ACIDVALUE(2,9,1))").problem?.says).toMatch(
      /acidValue holds #VALUE!/,
    );
    expect(first("=TITRE.ACIDVALUE(E1,0.1,10)", onSheet).problem?.says).toMatch(/#DIV\/0!/);
  });

  it("says so when there is no such function, too many arguments, or none of ours", () => {
    expect(first("=TITRE.DOES(1)").problem).toEqual({
      shows: "#NAME?",
      says: 'There is no function "TITRE.DOES": check its spelling.',
    });
    expect(first("=TITRE.CORRECTED(1,2,3)").problem?.says).toMatch(/2 arguments at most/);
    expect(explained('="TITRE.DOSE(1)"&SUM(A1)')).toEqual([]);
    const broken = explainFormula("=TITRE.DOSE(", nowhere);
    expect(isProblem(broken)).toBe(true);
  });

  it("keeps a long range short", () => {
    const column = Array.from({ length: 400 }, (_, row) => [row + 1]);
    const { shown } = first("=TITRE.CORRECTED(A1:A400)", () => column).arguments[0] ?? {};
    expect(shown).toMatch(/^1, 2, 3, .* … \(400 cells\)$/);
  });
});

/** Functions whose equation is arithmetic through and through. */
const arithmetic = `CORRECTED ACIDVALUE FFAPERCENT FFAFROMACIDVALUE ACIDVALUEFROMFFA MEANACIDVALUE
  EACHACIDVALUE PERLITRE MOLARITY TITRANTMASS MOLARITYFROMKHP TEMPERATURECORRECTED SAMPLETOWEIGH
  SAMPLEGRAMS OILMASS CHARGEPERCENT MOLARRATIO CONCORDANT NEUTRALISER CATALYST CATALYSTFROMFFA DOSE
  METHANOL SOAP BLEND BLENDEDACIDVALUE`.split(/\s+/);

describe("the equation of every function", () => {
  it.each(arithmetic)("%s: with its figures put in it comes to the answer", (id) => {
    const entry = catalogue.find((each) => each.id === id);
    const call = first(entry?.example.formula ?? "");
    if (call.worked === undefined) throw new Error(`${id} shows no figures`);
    const answers = [call.answer].flat(2).map(Number);
    const figures = workedOut(call.worked);
    expect(figures).toHaveLength(answers.length);
    for (const [place, answer] of answers.entries()) {
      // Six digits are shown of each figure.
      expect(Math.abs((figures[place] ?? NaN) / answer - 1)).toBeLessThan(2e-5);
    }
  });

  it.each(catalogue)("$id: names every argument it puts in, and no other", ({ id, ...entry }) => {
    const named = [...entry.equation.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    const names = entry.arguments.map(({ name }) => name);
    expect(
      named.filter((name) => !names.includes(name ?? "")),
      id,
    ).toEqual([]);
  });

  it.each(catalogue)("$id: is explained with no brace or machine word left over", (entry) => {
    for (const call of explained(entry.example.formula)) {
      const words = [call.equation, call.worked ?? "", ...call.arguments.map(({ shown }) => shown)];
      for (const text of words) expect(text).not.toMatch(/undefined|NaN|\[object|\{\w*[a-z]\w*\}/);
      for (const { shown } of call.arguments) expect(shown).not.toBe("");
    }
  });

  it("never throws, whatever the cells hold", () => {
    const cell = fc.oneof(
      fc.double(),
      fc.string(),
      fc.boolean(),
      fc.constantFrom<unknown>(null, undefined, "", {}, { type: "Error" }, [], new Date(0)),
    );
    const grid = fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 3 });
    fc.assert(
      fc.property(
        fc.constantFrom(...catalogue),
        fc.array(grid, { maxLength: 9 }),
        (entry, cells) => {
          const names = entry.arguments.map((_, place) => `A${place + 1}`);
          const text = `=TITRE.${entry.id}(${names.join(",")})`;
          const [call] = explained(text, (name) => cells[Number(name.slice(1)) - 1]);
          expect(call?.arguments).toHaveLength(entry.arguments.length);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
