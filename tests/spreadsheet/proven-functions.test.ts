/**
 * The functions whose results the page writes into files, with awkward arguments: worked out by the
 * page's engine and by LibreOffice, they come to the same, or the page knows that they are doubtful.
 */
import { beforeAll, describe, expect, it } from "vitest";
import { unprovenReason } from "../../src/workbench/trust/proven";
import { casesOf } from "./proven/cases";
import { type Both, byBoth, isSame } from "./proven/oracle";
import { hasLibreOffice } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

/** Of each function; EACH=2000 asks them all. */
const most = Number(process.env.EACH ?? 70);

const cases = new Map(
  [...casesOf(most)].map(([name, formulas]) => [
    name,
    formulas.filter((formula) => unprovenReason(`=${formula}`, {}) === undefined),
  ]),
);

describe.skipIf(!isInstalled && !isRequired)("worked out here and by LibreOffice,", () => {
  const found = new Map<string, Both>();

  beforeAll(async () => {
    const formulas = [...new Set([...cases.values()].flat())];
    for (const both of await byBoth(formulas)) found.set(both.formula, both);
  }, 240_000);

  it.each([...cases.keys()])("%s comes to the same", (name) => {
    const asked = (cases.get(name) ?? []).flatMap((formula) => found.get(formula) ?? []);
    expect(asked.length).toBeGreaterThan(0);
    const wrong = asked.filter((both) => !both.isDoubtful && !isSame(both));
    expect(wrong).toEqual([]);
  });

  it("is not held back for being doubtful where the arguments are figures and words", () => {
    const usual = [...found.values()].filter(({ isDoubtful }) => !isDoubtful);
    expect(usual.length).toBeGreaterThan(found.size / 2);
  });
});
