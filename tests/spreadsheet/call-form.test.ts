/**
 * What LibreOffice shows on opening of cells that call the add-in, as *Start here* of the samples says.
 * Where it is not installed this is left out, and says so; with REQUIRE_ALL=1 a missing one fails.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { opened } from "../xlsx/answers";
import { asProgramSaves } from "../xlsx/program-form";
import { hasLibreOffice, type ShownFiles, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const names = ["logbook", "what-if", "checks"];
const asOurs = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));

const files = new Map(
  names.flatMap((name) => [
    [name, asOurs(name)],
    [`${name}-saved`, asProgramSaves(asOurs(name))],
  ]),
);

describe.skipIf(!isInstalled && !isRequired)("cells that call the add-in, in LibreOffice", () => {
  const shown: ShownFiles = isInstalled ? shownBy(files, 1) : new Map();

  /** One that asks whether the function is known says so in words. */
  const asks = (formula: string): boolean => formula.includes("ISERROR(TITRE.");

  /** Those of a file, by whether they are array formulas in it: do they show #NAME? */
  const unknown = (name: string, isArray: boolean): boolean[] =>
    opened(files.get(name) ?? new Uint8Array()).sheets.flatMap((sheet) =>
      sheet.cells
        .filter(
          ({ formula = "", array }) =>
            formula.includes("TITRE.") && !asks(formula) && isArray === Boolean(array),
        )
        .map(({ row, column }) => shown.get(name)?.get(sheet.name)?.[row]?.[column] === "#NAME?"),
    );

  it("show the figures saved with a file of ours where each formula fills one cell", () => {
    const plain = unknown("what-if", false);
    expect(plain.length).toBeGreaterThan(50);
    expect(plain).not.toContain(true);
  });

  it.each(names)("show #NAME? in %s where one formula works on many cells", (name) => {
    expect(unknown(name, true)).not.toContain(false);
  });

  it("show the saved figures too where they do not follow from such a cell", () => {
    const plain = unknown("logbook", false);
    expect(plain.filter((isUnknown) => !isUnknown).length).toBeGreaterThan(30);
  });

  it.each(names)("show #NAME?, nearly every one, once the program has saved %s", (name) => {
    const saved = unknown(`${name}-saved`, true);
    expect(unknown(`${name}-saved`, false)).toEqual([]);
    // a row that is not begun asks nothing of the add-in
    expect(saved.filter((isUnknown) => isUnknown).length).toBeGreaterThan(0.85 * saved.length);
  });
});
