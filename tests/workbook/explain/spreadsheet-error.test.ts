import { describe, expect, it } from "vitest";
import { spreadsheetReason } from "../../../src/workbook/explain/spreadsheet-error";

const error = (code: string) => ({ type: "Error", basicValue: code });
const nothing = () => undefined;

describe("the reason of an error that the spreadsheet itself gives", () => {
  it("is that it was put in, where there is no formula", () =>
    expect(spreadsheetReason("#N/A", "", nothing)).toMatch(/^#N\/A itself was put into this cell/));

  it("is the cell it reads that shows one, wherever in the formula it stands", () => {
    const lookup = (written: string) =>
      written === "Weir!B2:B3" ? [[2], [error("#REF!")]] : [[1, "a", null, true]];
    expect(spreadsheetReason("#REF!", "=A1+SUM(2,(Weir!B2:B3))*-C1%", lookup)).toBe(
      "It reads Weir!B2:B3, where #REF! stands.",
    );
  });

  it.each([
    ["#DIV/0!", "divided"],
    ["#N/A", "not there"],
    ["#NAME?", "name"],
    ["#NULL!", "no cell in common"],
    ["#NUM!", "figure"],
    ["#REF!", "cell"],
    ["#SPILL!", "answer"],
    ["#VALUE!", "word"],
    ["#CALC!", "cannot work it out"],
  ])("is what %s means, where it reads no other", (code, word) =>
    expect(spreadsheetReason(code, "=A1/B1", () => [[1]])).toContain(word),
  );

  it("is one sentence for a formula that cannot be read", () =>
    expect(spreadsheetReason("#NAME?", "=1+", nothing)).toMatch(/^[^.]*\.$/));
});
