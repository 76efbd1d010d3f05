import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { formulaFromFile } from "../../src/xlsx/formulas/from-file";
import { formulaToFile, storedFormula } from "../../src/xlsx/formulas/to-file";

/** As a cell shows it, and as the file holds it in a cell of the table Log. */
const pairs: [string, string][] = [
  ["=TITRE.DOSE(A1,B2)", "_xldudf_TITRE_DOSE(A1,B2)"],
  ['="TITRE.DOSE("&"_xlfn."', '"TITRE.DOSE("&"_xlfn."'],
  ["=T.INV.2T(0.05,3)+STDEV.S(A:A)", "_xlfn.T.INV.2T(0.05,3)+_xlfn.STDEV.S(A:A)"],
  ["=FILTER(A1#,B1:B3>2)", "_xlfn._xlws.FILTER(_xlfn.ANCHORARRAY(A1),B1:B3>2)"],
  ["=@A1:A3*2", "_xlfn.SINGLE(A1:A3)*2"],
  ["=LET(x,1,y,x+1,x*y)", "_xlfn.LET(_xlpm.x,1,_xlpm.y,_xlpm.x+1,_xlpm.x*_xlpm.y)"],
  [
    '=MAP(A1:A3,LAMBDA(v,TITRE.SOAP(v,1,"KOH")))',
    '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xldudf_TITRE_SOAP(_xlpm.v,1,"KOH")))',
  ],
  [
    "=LAMBDA(f,f(1))(LAMBDA(x,x))",
    "_xlfn.LAMBDA(_xlpm.f,_xlpm.f(1))(_xlfn.LAMBDA(_xlpm.x,_xlpm.x))",
  ],
  ["=AGGREGATE(1,6,A1:A3)+NETWORKDAYS.INTL(1,2)", "AGGREGATE(1,6,A1:A3)+NETWORKDAYS.INTL(1,2)"],
  ["=SUM(Log[[#This Row],[Titre 1]:[Titre 3]])", "SUM(Log[[#This Row],[Titre 1]:[Titre 3]])"],
  ["=_xldudf_CX_GET(1)", "_xldudf_CX_GET(1)"],
  ["='it''s'!A1+[2]Data!B2", "'it''s'!A1+[2]Data!B2"],
  ['=(TITRE.DOSE(A1,"KOH"))/453.59', '(_xldudf_TITRE_DOSE(A1,"KOH"))/453.59'],
  ["=( ( STDEV.S(A1:A3) ) )/2", "( ( _xlfn.STDEV.S(A1:A3) ) )/2"],
  ["=SUM((A1#),(@B1:B3))", "SUM((_xlfn.ANCHORARRAY(A1)),(_xlfn.SINGLE(B1:B3)))"],
  ["=LET(x,1,(x)+1)", "_xlfn.LET(_xlpm.x,1,(_xlpm.x)+1)"],
  ["=LET(x,y,y,2,x*y)", "_xlfn.LET(_xlpm.x,y,_xlpm.y,2,_xlpm.x*_xlpm.y)"],
  ["=LAMBDA(f,(f(1)))", "_xlfn.LAMBDA(_xlpm.f,(_xlpm.f(1)))"],
  ["=(@A1):B3", "(_xlfn.SINGLE(A1)):B3"],
  ["=([2]!STDEV.S(A1))", "([2]!STDEV.S(A1))"],
];

describe("formulas in files", () => {
  it.each(pairs)("%s is stored as a file holds it, and read back", (shown, stored) => {
    expect(formulaToFile(shown, "Log!A1", "Log")).toBe(stored);
    expect(formulaFromFile(stored)).toBe(shown);
  });

  it.each([
    ["=[@Lot]", "Log[[#This Row],[Lot]]"],
    ["=([@Lot])/2", "(Log[[#This Row],[Lot]])/2"],
    ["=([2]!_xldudf_TITRE_DOSE(A1))", "(_xldudf_TITRE_DOSE(A1))"],
    ["=[@[Titre 1]:[Titre 3]]", "Log[[#This Row],[Titre 1]:[Titre 3]]"],
    ["=SUM([Mass g])", "SUM(Log[Mass g])"],
    ["=Other[@Lot]", "Other[[#This Row],[Lot]]"],
    ["=Log[@[a'#b]]", "Log[[#This Row],[a'#b]]"],
    ["=[2]!_xldudf_TITRE_DOSE(A1)", "_xldudf_TITRE_DOSE(A1)"],
    ["=titre.dose(a1)", "_xldudf_TITRE_DOSE(a1)"],
  ])("%s is stored in the long form", (shown, stored) => {
    expect(formulaToFile(shown, "Log!A1", "Log")).toBe(stored);
  });

  it.each([
    ["_xldudf_titre_dose(a1)", "=TITRE.DOSE(a1)"],
    ["[2]!_xldudf_TITRE_DOSE(A1)", "=TITRE.DOSE(A1)"],
    ["_xlfn.SINGLE(A1+A2)", "=@(A1+A2)"],
    ["_xlfn.SINGLE(A1):B3", "=(@A1):B3"],
    ["A1:_xlfn.ANCHORARRAY(B3)", "=A1:(B3#)"],
    ["_xlfn.ANCHORARRAY(_xlfn.SINGLE(A1))", "=(@A1)#"],
    ["(_xlfn.SINGLE((A1,B1)))", "=(@(A1,B1))"],
    ["SUM(1,", "=SUM(1,"],
    ["_xlfn.STDEV.S(1,", "=STDEV.S(1,"],
  ])("%s, of other programs or broken, is shown as well as can be", (stored, shown) => {
    expect(formulaFromFile(stored)).toBe(shown);
  });

  it("keep every function of ours through a file and back", () => {
    for (const { id } of catalogue) {
      const shown = `=TITRE.${id}(A1,"TITRE.${id}(")`;
      expect(formulaFromFile(formulaToFile(shown, "A1"))).toBe(shown);
    }
  });

  it.each([
    ["=SUM(A1:A3*B1:B3)", true],
    ["=SUM(-A1:A3)", true],
    ["=SUM(IF(A1:A3>1,1,0))", true],
    ["=SUM(ABS(A1:A3))", true],
    ["=AVERAGE(Log[Titre]*2)", true],
    ["=SUM(Log[[#This Row],[a]:[b]]*2)", true],
    ["=MATCH(1,(A1:A3=2)*(B1:B3=3),0)", true],
    ["=A1:A3", true],
    ["=A1#", true],
    ["={1,2}", true],
    ["=SEQUENCE(3)", true],
    ["=INDEX(SORT(A1:A3),1)", true],
    ["=TITRE.OUTLIERS(A1:A3)", true],
    [`=1${"+1".repeat(4000)}+SUM(A1:A2+1)`, true],
    ["=SUM(A1:A3)*2", false],
    ["=SUMPRODUCT(A1:A3*B1:B3)", false],
    ["=AVERAGE(A1:INDEX(B:B,3))", false],
    ['=IF(COUNT(A1:A3)<3,"",A1*2)', false],
    ["=Log[[#This Row],[Titre]]*2", false],
    ["=@A1:A3*2", false],
    ["=VLOOKUP(A1,B:C,2,FALSE)+1", false],
    ["=SUM({1,2})", false],
    ['=TITRE.DOSE(A1:A3,"neutralised",0.1,C1:C3,90,"KOH",90,0.7)', false],
    [`=1${"+1".repeat(4000)}`, false],
  ])("%s is worked out as an array: %s", (formula, isArray) => {
    expect(storedFormula(formula, "A1").isArray).toBe(isArray);
  });

  it("come back whatever they are made of", () => {
    const leaf = fc.constantFrom(
      "A1",
      "$B$2:C9",
      '"_xl"',
      "2.5",
      "TRUE",
      "#N/A",
      "Log[Lot]",
      "{1,2;3,4}",
      "rate",
    );
    const names = ["TITRE.DOSE", "STDEV.S", "SUM", "SORT", "XLOOKUP", "CX.GET"];
    const { formula } = fc.letrec<{ formula: string }>((tie) => ({
      formula: fc.oneof(
        { depthSize: "small" },
        leaf,
        fc
          .tuple(fc.constantFrom(...names), fc.array(tie("formula"), { maxLength: 3 }))
          .map(([name, given]) => `${name}(${given.join(",")})`),
        fc
          .tuple(tie("formula"), fc.constantFrom("+", "&", ">="), tie("formula"))
          .map((parts) => parts.join("")),
      ),
    }));
    fc.assert(
      fc.property(formula, (text) => {
        expect(formulaFromFile(formulaToFile(`=${text}`, "A1"))).toBe(`=${text}`);
      }),
      { numRuns: 300 },
    );
  });
});
