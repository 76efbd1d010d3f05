/** What is said of a file that was just opened: of one's own, that it is open, and nothing to worry about. */
import "../../src/workbench/engine/node";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openedWords } from "../../src/workbench/bar/opened-words";
import { root } from "../rules/sources-of";
import { fixture, inGrid } from "./file";

async function said(name: string, bytes: Uint8Array): Promise<unknown[]> {
  let words: unknown[] = [];
  await inGrid(bytes, ({ workbook, grid, holding }) => {
    words = openedWords(name, workbook, { holding, cells: grid.cells }, false);
  });
  return words;
}

const notShown = { says: "Not shown here, and kept in the file as it is:" };

describe("a file that was opened", () => {
  it("is said to be open, and no more, where it is a logbook begun here", async () => {
    const bytes = readFileSync(join(root, "sample-workbooks/own-logbook.xlsx"));
    // its 124 notes are in the pane, each beside its cell
    expect(await said("my-logbook.xlsx", bytes)).toEqual([
      "my-logbook.xlsx is open. All of it is shown.",
    ]);
  });

  it("is still said to keep what nothing here shows", async () => {
    expect(await said("book.xlsx", fixture("threaded"))).toContainEqual({
      ...notShown,
      items: expect.arrayContaining([expect.stringContaining("threaded comment")]) as unknown,
    });
  });
});
