import { describe, expect, it } from "vitest";
import { cannotFollow } from "../../../src/xlsx/structure/cannot-follow";
import { opened } from "../answers";
import { bookOf } from "../files";

const formulas = ['INDIRECT("A"&amp;B1)', "SUM(A1:A9)", "SUM(Data:Data!A1)", '"INDIRECT(A1)"'];

describe("what cannot follow rows that move", () => {
  it("is an address held as a text, and not one that is an address", () => {
    const cells = formulas.map(
      (text, index) => `<row r="${index + 1}"><c r="C${index + 1}"><f>${text}</f></c></row>`,
    );
    expect(cannotFollow(opened(bookOf(cells.join(""))), "Data")).toEqual({
      texts: [{ sheet: "Data", row: 0, column: 2 }],
      overSheets: [],
    });
  });
});
