import { describe, expect, it } from "vitest";
import { workbookAt } from "../../src/host/excel/workbook-at";

describe("the workbook that drafts belong to in a spreadsheet program", () => {
  it.each([
    ["", ""],
    ["https://files.example/weir.xlsx", "document/https://files.example/weir.xlsx"],
    ["https://files.example/weir.xlsx?web=1#Log", "document/https://files.example/weir.xlsx"],
    ["C:\\logs\\weir #2?.xlsx", "document/C:\\logs\\weir #2?.xlsx"],
  ])("at %s is %s", (url, workbook) => {
    expect(workbookAt(url)).toBe(workbook);
  });
});
