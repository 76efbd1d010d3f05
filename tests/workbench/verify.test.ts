/** What is read back after saving: what was asked is there, and what was not asked is as it was. */
import { describe, expect, it } from "vitest";
import { notAsAsked } from "../../src/workbench/file/verify";
import type { Edit } from "../../src/xlsx";
import { bookOf } from "../xlsx/files";
import { opened } from "./file";

const file = (titre: string, held: string, word = "oak") =>
  opened(
    bookOf(
      `<row r="1"><c r="A1"><v>${titre}</v></c><c r="B1"><f>RAND()+A1</f><v>${held}</v></c><c r="C1" t="str"><f>"o"&amp;A1</f><v>${word}</v></c><c r="D1" t="e"><f>NA()</f><v>#N/A</v></c></row>`,
    ),
  );

const before = file("2", "7");
const asked: readonly Edit[] = [
  { do: "set-cell", sheet: "Data", row: 0, column: 0, content: { kind: "value", value: 5 } },
];

describe("a saved file read back", () => {
  it("is right where what was asked is there and the rest is as it was", () => {
    expect(notAsAsked(asked, file("5", "7"), before)).toBeUndefined();
  });

  it("is wrong where what was asked is not there", () => {
    expect(notAsAsked(asked, file("2", "7"), before)).toBe("Data!A1");
  });

  it("is wrong where a held cell that nobody touched came to something else", () => {
    expect(notAsAsked(asked, file("5", "8"), before)).toBe("Data!B1");
    expect(notAsAsked(asked, file("5", "7", "ash"), before)).toBe("Data!C1");
  });

  it("is wrong where a cell that nobody touched is gone", () => {
    const gone = opened(bookOf('<row r="1"><c r="A1"><v>5</v></c></row>'));
    expect(notAsAsked(asked, gone, before)).toBe("Data!B1");
  });
});
