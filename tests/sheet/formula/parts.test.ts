import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { plainName, storedName, titreIdOf } from "../../../src/sheet/formula/names";
import { readFormula, textOf } from "../../../src/sheet/formula/read";
import { sheetOf, targetOf } from "../../../src/sheet/formula/reference";
import { splice } from "../../../src/sheet/formula/splice";
import { titreCalls } from "../../../src/sheet/formula/walk";
import { treeOf } from "./trees";

function callsIn(text: string): string[] {
  const formula = readFormula(text);
  if (isProblem(formula)) throw new Error(text);
  return titreCalls(formula.tree).map((call) => textOf(formula, call));
}

describe("our functions in a formula", () => {
  it("are found in every spelling, outer ones first, in the order they are written", () => {
    expect(
      callsIn(
        "=IF(A1,_xldudf_titre_DOSE(TITRE.CORRECTED(B1)),[2]!_xldudf_TITRE_SOAP(1))+titre.blend(1)",
      ),
    ).toEqual([
      "_xldudf_titre_DOSE(TITRE.CORRECTED(B1))",
      "TITRE.CORRECTED(B1)",
      "[2]!_xldudf_TITRE_SOAP(1)",
      "titre.blend(1)",
    ]);
  });

  it.each([
    ['="TITRE.DOSE(1)"&A1'],
    ["=TITRE_DOSE(1)"],
    ["=MYTITRE.DOSE(1)"],
    ["='other.xlam'!TITRE.DOSE(1)"],
    ["=SUM(T[TITRE.DOSE(1)])"],
    ["='TITRE.DOSE(1)'!A1"],
  ])("are not seen in %s", (text) => {
    expect(callsIn(text)).toEqual([]);
  });

  it("go by one id, whatever the spelling", () => {
    expect(titreIdOf("Titre.Dose")).toBe("DOSE");
    expect(titreIdOf(storedName("DOSE"))).toBe("DOSE");
    expect(titreIdOf("_XLDUDF_TITRE_dose")).toBe("DOSE");
    expect(titreIdOf("TITRE.DOSE.S")).toBeUndefined();
  });

  it("have marks of the file format taken off other names", () => {
    expect(plainName("_xlfn._xlws.filter")).toBe("FILTER");
    expect(plainName("STDEV.S")).toBe("STDEV.S");
  });
});

function reference(text: string) {
  const tree = treeOf(text);
  if (tree.kind !== "reference") throw new Error(`${text} is a ${tree.kind}`);
  return tree;
}

describe("what a reference names", () => {
  it.each([
    ["Lots!A1", { first: "Lots" }],
    ["'Bob''s (log), 2026'!A1", { first: "Bob's (log), 2026" }],
    ["Jan:Dec!A1", { first: "Jan", last: "Dec" }],
    ["'a b:c d'!A1", { first: "a b", last: "c d" }],
    ["[2]Lots!A1", { workbook: "2", first: "Lots" }],
    ["[1]!rate", { workbook: "1", first: "" }],
    ["'C:\\lots\\[May.xlsx]Log'!A1", { workbook: "C:\\lots\\May.xlsx", first: "Log" }],
    ["'[1]My sheet'!A1", { workbook: "1", first: "My sheet" }],
    ["T[a!b]", undefined],
    ["A1", undefined],
  ])("gives the sheet of %s", (text, sheet) => {
    expect(sheetOf(reference(text))).toEqual(sheet);
  });

  it.each([
    ["$B$3", { top: 2, left: 1, bottom: 2, right: 1 }],
    ["Lots!A1:B2", { top: 0, left: 0, bottom: 1, right: 1 }],
    ["B2:A1", { top: 0, left: 0, bottom: 1, right: 1 }],
    ["C:D", { top: undefined, left: 2, bottom: undefined, right: 3 }],
    ["2:4", { top: 1, left: undefined, bottom: 3, right: undefined }],
  ])("gives the cells of %s", (text, block) => {
    const target = targetOf(reference(text));
    if (target.kind !== "cells") throw new Error(target.kind);
    // A whole column may be said to begin at its first row.
    const { top, left, bottom, right } = target.edges;
    expect({ bottom, right }).toEqual({ bottom: block.bottom, right: block.right });
    expect([top ?? 0, left ?? 0]).toEqual([block.top ?? 0, block.left ?? 0]);
  });

  it.each([
    ["T[Mass g]", { table: "T", sections: [], columns: ["Mass g"] }],
    ["[@[Titre 1, mL]]", { table: "", sections: ["this row"], columns: ["Titre 1, mL"] }],
    ["T[[#This Row],[a]:[c]]", { table: "T", sections: ["this row"], columns: ["a", "c"] }],
    ["T['[x'] ''y'']", { table: "T", sections: [], columns: ["[x] 'y'"] }],
    ["T[#Totals]", { table: "T", sections: ["totals"], columns: [] }],
  ])("gives the table, rows and columns of %s", (text, parts) => {
    expect(targetOf(reference(text))).toEqual({ kind: "structured", ...parts });
  });

  it("gives a name, and says when the reference was lost", () => {
    expect(targetOf(reference("Lots!rate"))).toEqual({ kind: "name", name: "rate" });
    expect(targetOf(reference("Lots!#REF!"))).toEqual({ kind: "lost" });
  });
});

describe("splicing", () => {
  it("puts new text in place of parts and leaves every other character", () => {
    const text = '= A1 + "A1" +B1';
    expect(
      splice(text, [
        { start: 13, end: 15, text: "B$1" },
        { start: 2, end: 4, text: "$A$1" },
      ]),
    ).toBe('= $A$1 + "A1" +B$1');
  });

  it("refuses parts that overlap", () => {
    const parts = [
      { start: 0, end: 3, text: "" },
      { start: 2, end: 4, text: "" },
    ];
    expect(() => splice("abcdef", parts)).toThrow(RangeError);
  });
});
