import { describe, expect, it } from "vitest";
import { savedWords } from "../../src/workbench/bar/saved-words";

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

  it("says that Undo starts afresh when the file has gained something", () => {
    const added = { do: "add-sheet", name: "Weir" } as const;
    const words = savedWords("log.xlsx", { ...none, edits: [cell, added as never] });
    expect(words).toContain("Undo starts afresh");
  });
});
