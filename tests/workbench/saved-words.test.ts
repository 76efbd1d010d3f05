import { describe, expect, it } from "vitest";
import { savedWords, wordsOfVisit } from "../../src/workbench/bar/saved-words";

const none = { edits: [], leftAsTheyWere: 0, looksLost: 0 };
const cell = {
  do: "set-cell",
  sheet: "Log",
  row: 1,
  column: 0,
  content: { kind: "value", value: 2.6 },
} as const;

describe("what one is told after saving", () => {
  it("says that nothing was changed", () => {
    expect(savedWords("log.xlsx", none)).toContain("the same file, byte for byte");
  });

  it("counts the cells, and leaves Undo unmentioned where it goes on as before", () => {
    const words = savedWords("log.xlsx", { ...none, edits: [cell] });
    expect(words).toContain("1 cell written");
    expect(words).not.toContain("Undo");
  });

  it("says who works out what was left, and how where a program does not do so by itself", () => {
    const words = savedWords("log.xlsx", { ...none, edits: [cell], leftAsTheyWere: 2 });
    expect(words).toContain("2 formulas got no new result in the file");
    expect(words).toContain("in LibreOffice press Ctrl+Shift+F9");
    expect(words).not.toContain("#NAME?");
    expect(savedWords("log.xlsx", { ...none, leftAsTheyWere: 1 }, true)).toContain("#NAME?");
    expect(savedWords("log.xlsx", { ...none, edits: [cell] })).not.toContain("LibreOffice");
  });

  it("say once how to hand on a workbook that calls functions of the add-in, and of no other", () => {
    const words = wordsOfVisit();
    const save = (hasOurs: boolean): string =>
      words("log.xlsx", { edits: { ...none, edits: [cell] }, isRestructured: false }, hasOurs);
    expect(save(false)).not.toContain("partner copy");
    expect(save(true)).toContain("make a partner copy");
    expect(save(true)).not.toContain("partner copy");
  });

  it("says that there is no undoing past it when the file has gained something", () => {
    const added = { do: "add-sheet", name: "Weir" } as const;
    const words = savedWords("log.xlsx", { ...none, edits: [cell, added as never] });
    expect(words).toContain("You cannot undo past this point.");
  });
});
