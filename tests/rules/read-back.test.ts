/** Every file that is made is read back before it is given to anybody: there is no way around. */
import { describe, expect, it } from "vitest";
import { filesUnder } from "./sources-of";

describe("the bytes of a workbook", () => {
  const sources = filesUnder("src");
  const makers = sources.filter(({ text }) => /\.toBytes\(\)/.test(text));

  it("are made in four places only", () => {
    expect(makers.map(({ path }) => path).sort()).toEqual([
      "src/partner/sharing/share.ts",
      "src/xlsx/patch.ts",
      "src/xlsx/structure/lines/with-lines.ts",
      "src/xlsx/structure/sheets.ts",
    ]);
  });

  it.each(makers)("leave $path read back", ({ text }) => {
    expect(text).toMatch(
      /checkWritten\(draft, apply\(draft\)\)|ledger\.check\(copy,|refuseOtherwise\((?:act, )?opened, after/,
    );
  });
});
