import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { fileOf } from "../../src/cli/samples/sample";
import { scenariosBook } from "../../src/cli/scenarios/book";
import { root } from "../rules/sources-of";

it("the workbook for a person with the program is what is made anew, byte for byte", async () => {
  const kept = readFileSync(join(root, "tests/scenarios.xlsx"));
  expect(kept.equals(await fileOf(scenariosBook()))).toBe(true);
});
