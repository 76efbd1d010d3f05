/** Sheets renamed, moved and deleted here, and by LibreOffice itself: cell by cell it holds the same. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isFileProblem, openXlsx, restructured, type StructuralAct } from "../../../src/xlsx";
import { root } from "../../rules/sources-of";
import { made } from "../../xlsx/files";
import { type Asked, type Held, heldAfter } from "./acting";
import { hasLibreOffice } from "./libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";

const sample = (name: string) =>
  new Uint8Array(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));

const files: readonly (readonly [string, Uint8Array])[] = [
  ...["charts", "dynamic", "pivot", "prefixed", "threaded", "tidy"].map(
    (name) => [name, made(name)] as const,
  ),
  ...["checks", "old-logbook", "what-if"].map((name) => [name, sample(name)] as const),
];

/** What is done to a file: its second sheet is renamed, its last moved to the front, its first deleted. */
function actsOn(bytes: Uint8Array): StructuralAct[] {
  const book = openXlsx(bytes);
  if (isFileProblem(book)) return [];
  const names = book.sheets.map(({ name }) => name);
  const [first = "", second = first] = names;
  return [
    { do: "rename-sheet", sheet: second, name: "It's & so" },
    { do: "move-sheet", sheet: names.at(-1) ?? "", to: 0 },
    { do: "delete-sheet", sheet: first },
    { do: "delete-sheet", sheet: second },
  ];
}

const cases = files.flatMap(([name, bytes]) =>
  actsOn(bytes).flatMap((act) => {
    const book = openXlsx(bytes);
    const after = isFileProblem(book) ? book : restructured(book, act);
    return isFileProblem(after)
      ? []
      : [{ name: `${name}: ${act.do} ${act.sheet}`, bytes, act, ours: after.file.bytes }];
  }),
);

/** It writes what is lost with the cell that it was; we write #REF! alone. */
const plain = (held: Held | undefined): string[] =>
  (held ?? []).map((line) => line.replace(/\$?#REF!(?:\.[$A-Z0-9#]+(?::[$A-Z0-9#]+)?)?/g, "#REF!"));

describe.skipIf(!isInstalled && !isRequired)("sheets of a workbook", () => {
  const asked = new Map<string, Asked>(
    cases.flatMap(({ name, bytes, act, ours }) => [
      [`${name}, theirs`, { bytes, act }],
      [`${name}, ours`, { bytes: ours }],
    ]),
  );
  const held = isInstalled ? heldAfter(asked) : new Map<string, Held>();

  it("are enough cases, of each kind", () => {
    expect(cases.length).toBeGreaterThan(20);
    expect(new Set(cases.map(({ act }) => act.do)).size).toBe(3);
  });

  it.each(cases.map(({ name }) => name))("come to the same there: %s", (name) => {
    const theirs = plain(held.get(`${name}, theirs`));
    expect(theirs.length).toBeGreaterThan(3);
    expect(plain(held.get(`${name}, ours`))).toEqual(theirs);
  });
});
