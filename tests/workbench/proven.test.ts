/** What the page will not work out, told from the formula's text. */
import { describe, expect, it } from "vitest";
import { type FormulaContext, unprovenReason } from "../../src/workbench/trust/proven";

const names: Record<string, string> = {
  Titre: "=Log!$B$2",
  Column: "=Log!$B$2:$B$9",
  Whole: "=SUBTOTAL(9,Log!$B$2:$B$9)",
};
const context: FormulaContext = {
  nameRefersTo: (name) => names[name],
  isTable: (name) => name === "Lots",
};

describe("a formula whose result may be saved", () => {
  it.each([
    "=A1*B1/C1",
    '=IF(A1="","",ROUND(AVERAGE(B1:B3)-C1,2))',
    "=SUMPRODUCT((A1:A9>2)*B1:B9)",
    "=LOOKUP(2,1/(Log[Lot]=Lots[[#This Row],[Lot]]),Log[Acid value])",
    "=-(TITRE.CORRECTED(B2:D2,E2))/1000",
    "=_xldudf_TITRE_CORRECTED(B2:D2,E2)",
    '=COUNTIF(Log[Lot],"A-1")',
    "=VLOOKUP(A1,Log!A:C,3,FALSE)",
    "=Titre+1",
    "=SUM(Column)",
    "=SUBTOTAL(109,A1:A9)",
    "=TODAY()-Log[[#This Row],[Date]]",
    "=ROWS($A$2:A2)",
    "=VLOOKUP(A1,Lots[],2,FALSE)",
  ])("is %s", (formula) => {
    expect(unprovenReason(formula, context)).toBeUndefined();
  });
});

describe("a formula that keeps its result, and why:", () => {
  it.each([
    ["=Whole+1", "SUBTOTAL in a name"],
    ["=ROWS(A:A)", "ROWS of whole rows or columns"],
    ["=XLOOKUP(A1,B1:B9,C1:C9)", "XLOOKUP"],
    ["=SUM(Lots)", "Lots[]"],
    ["=AGGREGATE(9,5,A1:A9)", "AGGREGATE"],
    ["=SUM(First:Last!A1)", "several sheets"],
    ["=[1]Other!A1", "another workbook"],
    ["=[2]!_xldudf_OTHER_CALL(A1)", "another"],
    ['=IFERROR(SUM(Oil_tab[Titre]),"none")', "the table Oil_tab"],
    ["=COUNT(Oil.tab[Titre])", "the table Oil.tab"],
    ["=SUM(Log[#All])", "headings or totals"],
    ["=Log[[#Totals],[Dose]]", "headings or totals"],
    ["=SUM((A1,B2))", "joined by a comma"],
    ["=A1:A9 A5:C5", "cross"],
    ["=A1:A9*2", "a range where one value belongs"],
    ["=Column*2", "a range where one value belongs"],
    ["=Log[Dose]*2", "a range where one value belongs"],
    ["=ROUND(A1:A9,2)", "a range where one value belongs"],
    ["=@A1:A9", "@"],
    ["=SUM(A1#)", "#"],
    ["=Unknown*2", "Unknown"],
    ["=RAND()", "RAND"],
    ['=INDIRECT("A1")', "INDIRECT"],
    ["=LAMBDA(x,x+1)(2)", "LAMBDA"],
    ["=IFERROR(OTHER.CALL(A1),0)", "OTHER.CALL"],
    ['=GETPIVOTDATA("Dose",A1)', "GETPIVOTDATA"],
    ["=SORT(A1:A9)", "SORT"],
    ['=SUM({"a,b",1})', "words in braces"],
    ["=-TRUE", "a sign before text"],
    ["=ABS()", "ABS with 0 arguments"],
    ["=1+", "cannot be read"],
  ])("%s: %s", (formula, why) => {
    expect(unprovenReason(formula, context)).toContain(why);
  });
});
