/** LibreOffice opens what was edited in the workbench's grid, and finds what was typed there. */
import { describe, expect, it } from "vitest";
import { fixture, inGrid } from "../../workbench/file";
import { hasLibreOffice, shownBy } from "./libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

describe.skipIf(!isInstalled && !isRequired)("LibreOffice", () => {
  it("shows figures, formulas and answers over many cells that were typed in the grid", async () => {
    let saved: Uint8Array | undefined;
    await inGrid(fixture("charts"), async (file) => {
      await file.grid.type({ sheet: "Log book", row: 4, column: 2 }, [[2.5]]);
      await file.grid.type({ sheet: "Log book", row: 14, column: 0 }, [
        ["=C5*4", "a <b> & c", "=C5:C6*2"],
      ]);
      saved = await file.saved();
    });
    const shown = shownBy(new Map([["edited", saved ?? new Uint8Array()]]), 0);
    const sheet = shown.get("edited")?.get("Log book");
    expect(sheet?.[4]?.[2]).toBe("2.5");
    // By hand: 56.1 x 0.1 x 2.5 / 10.02, and 2.5 x 4; below each other 2.5 x 2 and 3.1 x 2.
    expect(Number(sheet?.[4]?.[4])).toBeCloseTo((56.1 * 0.1 * 2.5) / 10.02, 12);
    expect(sheet?.[14]?.slice(0, 3)).toEqual(["10", "a <b> & c", "5"]);
    expect(sheet?.[15]?.[2]).toBe("6.2");
  });
});
