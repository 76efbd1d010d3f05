import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/core/problem/problem";
import { say } from "../../src/core/problem/wording";
import { evaluateFormula } from "./evaluate-formula";

const sentence = (text: string): string => {
  const answer = evaluateFormula(text);
  return isProblem(answer) ? say(answer) : `no problem: ${JSON.stringify(answer)}`;
};

describe("running a formula with its figures written out", () => {
  it.each([
    // by hand: 2.45 - 0.15; 56.1 x 0.1 x 2.3 / 10; 1.2903 x 282 / 561
    ["an array", "=TITRE.CORRECTED({2.4,2.5,2.45},{0.15})", 2.3],
    ["a column", "=TITRE.CORRECTED({2.4;2.5;2.45},0.15)", 2.3],
    ["the stored spelling", '_xldudf_TITRE_CORRECTED({2.4,2.5},"neutralised")', 2.45],
    ["a link", "[2]!_xldudf_TITRE_ACIDVALUE(2.3,0.1,10)", 1.2903],
    ["an argument left out in the middle", "=TITRE.SAMPLEGRAMS(5,,25)", 4.5585],
    ["per cent and signs", "=TITRE.ACIDVALUE(230%,+0.1,--10)", 1.2903],
    ["a call inside a call", "=TITRE.FFAFROMACIDVALUE(TITRE.ACIDVALUE(2.3,0.1,10))", 0.6486],
    ["one cell of a spill", "=INDEX(TITRE.EACHACIDVALUE({2.1,3.1},{0.1},0.1,{5,7.5}),1,2)", 2.244],
    ["a comparison's answer", "=TITRE.CONCORDANT({2.25,2.35},0.1)", true],
  ])("takes %s: %s", (_, formula, answer) => {
    const found = evaluateFormula(formula);
    if (typeof answer === "number") expect(found).toBeCloseTo(answer, 12);
    else expect(found).toBe(answer);
  });

  it("hands errors on as a cell would", () => {
    expect(sentence("=TITRE.ACIDVALUE(#N/A,0.1,10)")).toMatch(/holds #N\/A/);
    expect(sentence("=TITRE.ACIDVALUE(2,TITRE.ACIDVALUE(2,9,1),10)")).toMatch(/holds #VALUE!/);
    expect(sentence("=TITRE.CORRECTED({2.4,#DIV/0!},0.1)")).toMatch(/row 1 column 2.*#DIV\/0!/);
  });

  it("says what it cannot run", () => {
    expect(sentence("=TITRE.ACIDVALUE(A1,0.1,10)")).toBe(
      '"A1" has no value here: write the figure in its place.',
    );
    expect(sentence("=TITRE.ACIDVALUE(2*3,0.1,10)")).toMatch(/"2\*3" has no value here/);
    expect(sentence("=TITRE.DOES(1)")).toBe(
      'There is no function "TITRE.DOES": check its spelling.',
    );
    expect(sentence("=SUM(1,2)")).toBe('"=SUM(1,2)" calls no TITRE function.');
    expect(sentence("=TITRE.ACIDVALUE(1,2")).toMatch(/cannot be read at character 17/);
    expect(sentence("=TITRE.CORRECTED(1,2,3)")).toBe(
      "CORRECTED takes 2 arguments at most, and 3 were given.",
    );
  });
});
