import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { functionNamed } from "../../../src/functions/catalogue";
import { readFormula } from "../../../src/sheet/formula/read";
import { titreCalls } from "../../../src/sheet/formula/walk";
import { type PlainCall, plainCall } from "../../../src/partner/plain/plain-call";
import { plainLines } from "../../../src/partner/plain/plain-lines";

function plain(formula: string): PlainCall {
  const read = readFormula(formula);
  if (isProblem(read)) throw new Error(formula);
  const [call] = titreCalls(read.tree);
  const entry = functionNamed(call?.name ?? "");
  if (!call || !entry) throw new Error(formula);
  return plainCall(entry, call);
}

const lines = (formula: string): string[] => plainLines(plain(formula));

describe("a call written out in plain formulas", () => {
  it("is the bare arithmetic where all arguments are figures within their limits", () => {
    expect(lines("=TITRE.PERLITRE(2.3,1,2)")).toEqual(["=2.3*1/2"]);
    expect(lines('=TITRE.SAMPLEGRAMS(5,"canola",25)')).toEqual(["=5*0.9121"]);
    expect(lines('=TITRE.MOLARITY(5.61053,1,"potassium hydroxide",90)')).toEqual([
      "=5.61053*90/(100*56.1053*1)",
    ]);
  });

  it("guards a cell: not filled in is #N/A, text and what is out of range are errors", () => {
    expect(lines("=TITRE.PERLITRE(A2,1,2)")).toEqual([
      '=IF(OR(A2=0,TRIM(A2)=""),NA(),IF(AND(A2>0,A2<=1000,NOT(ISLOGICAL(A2))),A2*1/2,#VALUE!))',
    ]);
  });

  it("looks up the word of a cell in a helper cell", () => {
    const [helper = "", answer] = lines("=TITRE.MOLARITY(5,1,C2,90)");
    expect(helper).toMatch(/^H1 {2}base, g\/mol: =IF\(ISTEXT\(C2\),CHOOSE\(/);
    expect(helper).toContain('"potassiumhydroxide"');
    expect(answer).toBe("=5*90/(100*H1*1)");
  });

  it("takes a range as one, and a call among the arguments as a helper cell", () => {
    expect(lines("=TITRE.CONCORDANT('My log'!B2:B4,0.1)").at(-1)).toContain("MAX('My log'!B2:B4)");
    expect(lines("=TITRE.FFAFROMACIDVALUE(TITRE.ACIDVALUE(A2,0.1,10))")[0]).toMatch(
      /^H1 {2}acidValue: =IF\(OR\(A2=0/,
    );
    expect(lines("=TITRE.FFAFROMACIDVALUE(A2*2)")[0]).toBe("H1  acidValue: =A2*2");
  });

  it("is an error where the figures given are wrong, and #N/A where one is missing", () => {
    expect(lines("=TITRE.PERLITRE(-1,1,2)")).toEqual(["=#VALUE!"]);
    expect(lines("=TITRE.PERLITRE(2.3,,2)")).toEqual(["=NA()"]);
    expect(lines('=TITRE.MOLARITY(5,1,"lime",90)')).toEqual(["=#VALUE!"]);
    expect(lines("=TITRE.PERLITRE(A1:A2,1,2)")).toEqual(["=#VALUE!"]);
  });

  it("says why it cannot be shown: a range worked out cell by cell, or without an end", () => {
    expect(plain("=TITRE.CORRECTED(A1:A3*2)")).toMatchObject({ kind: "none" });
    expect(lines("=TITRE.CORRECTED(A:A)")).toEqual(["none: A:A has no end"]);
  });

  it("leaves the published checks as they are", () => {
    expect(plain("=TITRE.CHECKS()")).toEqual({ kind: "value" });
  });
});
