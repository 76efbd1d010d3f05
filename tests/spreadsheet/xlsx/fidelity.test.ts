/**
 * LibreOffice opens what we saved: the cells are there, and formulas whose results in the file are
 * wrong on purpose come out right when it works them out. Where it is not installed this is left out,
 * and says so; with REQUIRE_ALL=1 a missing one fails.
 */
import { describe, expect, it } from "vitest";
import { readCellName } from "../../../src/xlsx/cell-address";
import { patched } from "../../xlsx/answers";
import { fidelity } from "../../xlsx/fidelity";
import { hasLibreOffice, type ShownFiles, shownBy } from "./libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const fileName = (index: number) => `book${index}`;

/** In file names LibreOffice keeps a sheet's name but for what a file's name cannot hold. */
function at(shown: ShownFiles, index: number, sheet: string, address: string): string | undefined {
  const place = readCellName(address) ?? { row: -1, column: -1 };
  return shown.get(fileName(index))?.get(sheet)?.[place.row]?.[place.column];
}

function same(found: string | undefined, wanted: unknown, where: string): void {
  if (typeof wanted === "number") {
    expect(Math.abs(Number(found) / wanted - 1), `${where}: ${found}`).toBeLessThanOrEqual(1e-12);
  } else
    expect(found, where).toBe(typeof wanted === "boolean" ? String(wanted).toUpperCase() : wanted);
}

describe.skipIf(!isInstalled && !isRequired)("LibreOffice", () => {
  const files = new Map(
    fidelity.map(({ bytes, edits }, index) => [fileName(index), patched(bytes(), edits)]),
  );
  const shown = isInstalled ? shownBy(files, 0) : new Map();
  const asSaved = isInstalled ? shownBy(files, 1) : new Map();

  it("is there, or was not asked for", () => {
    expect(isInstalled).toBe(true);
  });

  it.each(fidelity.map((each, index) => [each.name, each, index] as const))(
    "shows the new cells of %s, worked out anew, right to 1e-12",
    (_, { expected, recalculated }, index) => {
      for (const [sheet, address, value] of [...expected, ...recalculated]) {
        same(at(shown, index, sheet, address), value, `${sheet}!${address}`);
      }
    },
  );

  it.each(fidelity.map((each, index) => [each.name, each, index] as const))(
    "shows the results that stand in the file of %s when it works nothing out",
    (_, { expected, recalculated }, index) => {
      for (const [sheet, address, value] of expected) {
        same(at(asSaved, index, sheet, address), value, `${sheet}!${address}`);
      }
      for (const [sheet, address] of recalculated) {
        expect(at(asSaved, index, sheet, address)).toBe("999");
      }
    },
  );
});
