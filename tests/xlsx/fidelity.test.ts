import { describe, expect, it } from "vitest";
import { readDirectory } from "../../src/xlsx/zip/directory";
import { opened, patched, valueIn } from "./answers";
import { fidelity } from "./fidelity";
import { partsOf } from "./files";

/** Every entry as it stands in the file, header and packed bytes, in the order of the directory. */
function entriesOf(bytes: Uint8Array): [string, string][] {
  const { entries, start } = readDirectory(bytes);
  const offsets = entries.map(({ offset }) => offset).sort((a, b) => a - b);
  return entries.map(({ name, offset }) => {
    const end = offsets.find((other) => other > offset) ?? start;
    return [name, Buffer.from(bytes.subarray(offset, end)).toString("base64")];
  });
}

const isClose = (found: unknown, wanted: unknown) => {
  if (typeof wanted !== "number") expect(found).toEqual(wanted);
  else expect(Math.abs((found as number) / wanted - 1)).toBeLessThanOrEqual(1e-12);
};

describe.each(fidelity)("$name", ({ bytes, edits, changed, added, removed, expected }) => {
  const before = bytes();
  const copy = before.slice();
  const after = patched(before, edits);

  it("keeps every other part, packed byte for packed byte, in its place", () => {
    const now = entriesOf(after);
    const kept = entriesOf(before).filter(([name]) => !removed?.includes(name));
    expect(now.map(([name]) => name)).toEqual([...kept.map(([name]) => name), ...(added ?? [])]);
    const wanted = new Map(kept);
    const differing = now.filter(([name, entry]) => wanted.get(name) !== entry);
    expect(differing.map(([name]) => name).sort()).toEqual([...changed, ...(added ?? [])].sort());
  });

  it("is a sound zip file to another reader", () => {
    expect(Object.keys(partsOf(after))).toEqual(entriesOf(after).map(([name]) => name));
  });

  it("holds the new cells, right to 1e-12", () => {
    const book = opened(after);
    for (const [sheet, address, value] of expected) isClose(valueIn(book, address, sheet), value);
  });

  it("leaves what is kept listed as before, and all other cells as they were", () => {
    const [was, is] = [opened(before), opened(after)];
    const lists = (kept: typeof was.kept) =>
      kept.filter(({ what }) => what !== "notes" && what !== "rich text");
    expect(lists(is.kept)).toEqual(lists(was.kept));
    const touched = new Set(
      edits.flatMap((edit) =>
        edit.do === "set-cell" ? [`${edit.sheet} ${edit.row} ${edit.column}`] : [],
      ),
    );
    for (const sheet of was.sheets) {
      const now = new Map(
        is.sheets
          .find(({ name }) => name === sheet.name)
          ?.cells.map((cell) => [`${sheet.name} ${cell.row} ${cell.column}`, cell]),
      );
      for (const cell of sheet.cells) {
        const key = `${sheet.name} ${cell.row} ${cell.column}`;
        if (!touched.has(key) && !cell.spilledFrom) expect(now.get(key)).toEqual(cell);
      }
    }
  });

  it("comes out the same from a workbook that is open, and leaves what was given untouched", () => {
    expect(patched(opened(before), edits)).toEqual(after);
    expect(before).toEqual(copy);
  });

  it("without edits is the very bytes that were opened", () => {
    expect(patched(before, [])).toBe(before);
    expect(patched(opened(before), [])).toBe(before);
  });

  it("takes more edits afterwards", () => {
    const sheet = opened(after).sheets[0]?.name ?? "";
    const again = patched(after, [
      { do: "set-cell", sheet, row: 99, column: 0, content: { kind: "value", value: 1 } },
    ]);
    expect(valueIn(opened(again), "A100", sheet)).toBe(1);
  });
});
