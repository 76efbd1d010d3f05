import { describe, expect, it } from "vitest";
import { areaName, columnLetters } from "../../../src/sheet/cell-name";
import { address } from "../../../src/sheet/address";
import { filledDown } from "../../../src/xlsx/formulas/shared";
import { isSameFormula } from "../../../src/sheet/formula/same-formula";
import { contentText, valueText } from "../../../src/workbook/planning/preview-text";

describe("addresses", () => {
  it("count columns in letters as a spreadsheet does", () => {
    expect([0, 25, 26, 51, 52, 701, 702, 16383].map(columnLetters)).toEqual([
      "A",
      "Z",
      "AA",
      "AZ",
      "BA",
      "ZZ",
      "AAA",
      "XFD",
    ]);
  });

  it("put a sheet's name in quotation marks where it could be taken for something else", () => {
    const on = (sheet: string): string =>
      address({ sheet, row: 11, column: 10, rows: 1, columns: 1 });
    expect(on("Titrations")).toBe("Titrations!K12");
    // not every program takes such a letter without them
    expect(on("Öl_2026")).toBe("'Öl_2026'!K12");
    expect(on("Lab log")).toBe("'Lab log'!K12");
    expect(on("Ines's")).toBe("'Ines''s'!K12");
    expect(on("AB12")).toBe("'AB12'!K12");
    expect(on("2026")).toBe("'2026'!K12");
    expect(on("RC")).toBe("'RC'!K12");
  });

  it("name the first and the last cell of a block", () => {
    expect(areaName({ row: 2, column: 0, rows: 2, columns: 32 })).toBe("A3:AF4");
  });
});

describe("a formula some rows down", () => {
  it("moves what is relative and nothing else", () => {
    expect(filledDown("=A5*$B$1+Log[[#This Row],[Lot]]", 1)).toBe(
      "=A6*$B$1+Log[[#This Row],[Lot]]",
    );
    expect(filledDown(`=SUM(K1:K$4)&"A1"&'My log'!C$2&Other!D9`, 3)).toBe(
      `=SUM(K4:K$4)&"A1"&'My log'!C$2&Other!D12`,
    );
    expect(filledDown("=Öl_2[@T1]+'C:\\lots\\[May.xlsx]Log'!A1+TRUE!T1", 1)).toBe(
      "=Öl_2[@T1]+'C:\\lots\\[May.xlsx]Log'!A2+TRUE!T2",
    );
    expect(filledDown("=SUM(A1:A1048576,XFD1048575,B$1048576)", 1)).toBe(
      "=SUM(#REF!,XFD1048576,B$1048576)",
    );
    expect(filledDown("=TITRE.CORRECTED(A2:C2,)", 10)).toBe("=TITRE.CORRECTED(A12:C12,)");
  });
});

describe("two spellings of one formula", () => {
  const ours = "=TITRE.CORRECTED(Titrations[[#This Row],[Titre 1 mL]:[Titre 6 mL]],B2)";
  const isSame = (other: string): boolean => isSameFormula(ours, other, "Titrations");

  it("are the same when only the program's spelling differs", () => {
    expect(isSame("=TITRE.CORRECTED(Titrations[@[Titre 1 mL]:[Titre 6 mL]],B2)")).toBe(true);
    expect(isSame("=titre.corrected( [@[Titre 1 mL]:[Titre 6 mL]] , b2 )")).toBe(true);
    expect(
      isSame("=_xldudf_TITRE_CORRECTED(titrations[[#This Row],[titre 1 mL]:[Titre 6 mL]],B2)"),
    ).toBe(true);
  });

  it("are the same when the program shows a call of one value with an @, as it does those of a file of ours", () => {
    expect(isSame(ours.replace("=", "=@"))).toBe(true);
    expect(
      isSame(ours.replace("=TITRE.CORRECTED", "=_xlfn.SINGLE(_xldudf_TITRE_CORRECTED") + ")"),
    ).toBe(true);
    const inside = "=ROUND(2*TITRE.DOSE(A1),1)";
    expect(isSameFormula(inside, inside.replace("TITRE", "@TITRE"), "")).toBe(true);
  });

  it("differ where an @ takes one value of many", () => {
    expect(isSameFormula("=TITRE.CHECKS()", "=@TITRE.CHECKS()", "")).toBe(false);
    expect(isSameFormula("=SUM(A1:A3)", "=SUM(@A1:A3)", "")).toBe(false);
  });

  it("are the same behind a link that another add-in left, whichever it is", () => {
    const stored = "_xldudf_TITRE_DOSE(A1)";
    for (const link of ["[2]!", "'C:/Users/a b/X.xla'!", "'https://d.example/[X.xlam]Y'!"]) {
      expect(isSameFormula("=TITRE.DOSE(A1)", `=${link}${stored}`, ""), link).toBe(true);
    }
    // A function of that name in another workbook is not ours: no mark says so.
    expect(isSameFormula("=TITRE.DOSE(A1)", "='C:/X.xla'!TITRE.DOSE(A1)", "")).toBe(false);
  });

  it("differ when a reference, a function or a text differs", () => {
    expect(isSame(ours.replace("B2", "B3"))).toBe(false);
    expect(isSame(ours.replace("CORRECTED", "EACHACIDVALUE"))).toBe(false);
    expect(isSame(ours.replace("Titre 6", "Titre 5"))).toBe(false);
    expect(isSameFormula('="a"', '="A"', "Titrations")).toBe(false);
    expect(isSame("")).toBe(false);
  });
});

describe("a value in a preview", () => {
  it("has the places its column shows, and every digit that was typed", () => {
    expect(valueText(2.9, "0.00")).toBe("2.90");
    expect(valueText(2.905, "0.00")).toBe("2.905");
    expect(valueText(15, "0")).toBe("15");
    expect(valueText(0.1, "General")).toBe("0.1");
  });

  it("is, of what would be written, as its cell will look: rounded as the cell rounds it", () => {
    const shown = (value: number, format: string): string =>
      contentText({ kind: "value", value }, format);
    expect(shown(2.905, "0.00")).toBe("2.91");
    expect(shown(0.0431123, "0.000")).toBe("0.043");
    expect(shown(0.1, "0.0000")).toBe("0.1000");
    expect([0.5, 0.12, 0.1234, 0.12345].map((each) => shown(each, "0.00##"))).toEqual([
      "0.50",
      "0.12",
      "0.1234",
      "0.1235",
    ]);
    expect(shown(0.074, "0%")).toBe("7%");
    expect(shown(46146, "yyyy-mm-dd")).toBe("2026-05-04");
  });

  it("is a day where the column holds days, as far as a spreadsheet counts them", () => {
    expect(valueText(46146, "yyyy-mm-dd")).toBe("2026-05-04");
    expect(valueText(2_958_465, "yyyy-mm-dd")).toBe("9999-12-31");
    expect(valueText(1e9, "yyyy-mm-dd")).toBe("1000000000");
  });

  it("is a text as it is, and an error by its code", () => {
    expect([valueText("<b>"), valueText(true), valueText({ error: "#N/A" })]).toEqual([
      "<b>",
      "TRUE",
      "#N/A",
    ]);
  });
});
