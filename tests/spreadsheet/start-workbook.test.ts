/**
 * The start workbook in LibreOffice, where there is no add-in: it opens whole, and claims no answer. Where
 * LibreOffice is not installed this is left out, and says so; with REQUIRE_ALL=1 a missing one fails.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { installFiles } from "../../src/cli/build/install/files";
import { root } from "../rules/sources-of";
import { opened } from "../xlsx/answers";
import { hasLibreOffice, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const made = installFiles(readFileSync(join(root, "manifest.xml"), "utf8"))["install/start.xlsx"];
const start = new Uint8Array(made as Buffer);

describe.runIf(isInstalled || isRequired)("the start workbook, in LibreOffice", () => {
  it("shows every sentence, and #NAME? for the question, whether it is worked out anew or not", () => {
    const [sheet] = opened(start).sheets;
    for (const mode of [0, 1] as const) {
      const shown = shownBy(new Map([["start", start]]), mode)
        .get("start")
        ?.get("Start here");
      const written = sheet?.cells.filter(({ value }) => typeof value === "string") ?? [];
      expect(written.length).toBe(6);
      for (const { row, column, value } of written) expect(shown?.[row]?.[column]).toBe(value);
      expect(shown?.[3]?.[0]).toMatch(/#NAME\?|Err:508/);
    }
  });
});
