import { describe, expect, it } from "vitest";
import { fixture } from "../second-opinion/fixtures";
import { libreOffice } from "../second-opinion/from-libreoffice";
import { hasLibreOffice } from "./xlsx/libreoffice";

/** LibreOffice where it is installed; with REQUIRE_ALL=1 a missing one fails. */
const soffice = process.env.SOFFICE ?? "soffice";
const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";

/** Two versions of the program may differ in the last of 15 digits. */
const lastDigit = 2e-14;

if (!isInstalled && !isRequired) {
  console.log("LibreOffice was not found: its second opinion is not made anew.");
}

describe.runIf(isInstalled || isRequired)("the second opinion of LibreOffice", () => {
  it("made anew is the committed one", () => {
    const committed = fixture("libreoffice") as unknown as Record<string, number[]>;
    const anew = libreOffice(soffice);
    expect(Object.keys(anew)).toEqual(Object.keys(committed));
    for (const [kind, answers] of Object.entries(anew)) {
      const before = committed[kind] ?? [];
      expect(answers).toHaveLength(before.length);
      for (const [place, answer] of answers.entries()) {
        const was = before[place] ?? Number.NaN;
        expect(Math.abs(answer - was), `${kind} ${place}`).toBeLessThanOrEqual(
          lastDigit * Math.abs(was),
        );
      }
    }
  });
});
