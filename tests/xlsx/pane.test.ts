import { describe, expect, it } from "vitest";
import { shareWorkbook } from "../../src/partner/sharing";
import { isFileProblem, newXlsx } from "../../src/xlsx";
import { contentTypeOf } from "../../src/xlsx/package/content-types";
import { Package } from "../../src/xlsx/package/package";
import { relationshipsOf } from "../../src/xlsx/package/relationships";
import { patched } from "./answers";
import { partsOf } from "./files";

const addIn = { id: "3b7f2c1a-9d54-4e0b-8a6e-5f1d0c9e7a42", version: "0.1.0.0" };
const sheet = {
  name: "Log",
  rows: [[{ value: "x" }]],
  columnWidths: [],
  tables: [],
  frozenRows: 0,
};
const made = newXlsx({ name: "Log", sheets: [sheet] });
if (isFileProblem(made)) throw new Error("the plain file");
const plain: Uint8Array = made;

const opening = (): Uint8Array => patched(plain, [{ do: "open-pane", ...addIn }]);

describe("a file that opens a pane", () => {
  it("leads from the file to the list of panes and on to the add-in, each of its kind (MS-OWEXML)", () => {
    const file = new Package(opening());
    const [, panes] = relationshipsOf(file, "");
    expect(panes?.type).toMatch(/\/2011\/relationships\/webextensiontaskpanes$/);
    const [shown] = relationshipsOf(file, panes?.target ?? "");
    expect(shown?.type).toMatch(/\/2011\/relationships\/webextension$/);
    expect(file.need(panes?.target ?? "")).toContain(`r:id="${shown?.id ?? ""}"`);
    expect(contentTypeOf(file, panes?.target ?? "")).toBe(
      "application/vnd.ms-office.webextensiontaskpanes+xml",
    );
    expect(contentTypeOf(file, shown?.target ?? "")).toBe(
      "application/vnd.ms-office.webextension+xml",
    );
  });

  it("is left as it is where it opens one already", () => {
    const other = { id: "00000000-0000-4000-8000-000000000000", version: "9.0.0.0" };
    expect(partsOf(patched(opening(), [{ do: "open-pane", ...other }]))).toEqual(
      partsOf(opening()),
    );
  });

  it("keeps every other part as it was, and loses the pane again in a copy for a partner", () => {
    const before = partsOf(plain);
    const after = partsOf(opening());
    for (const [name, text] of Object.entries(before)) {
      if (!/^_rels|Content_Types/.test(name)) expect(after[name]).toBe(text);
    }
    const shared = shareWorkbook(opening(), { kind: "partner", fileName: "start.xlsx" });
    if (isFileProblem(shared)) throw new Error("the copy");
    expect(shared.report.webExtensions).toBe(1);
    expect(Object.keys(partsOf(shared.bytes)).filter((name) => /webext/.test(name))).toEqual([]);
  });
});
