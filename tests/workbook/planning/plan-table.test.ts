import { describe, expect, it } from "vitest";
import { planTitration } from "../../../src/workbook/planning/record/record-titration";
import { titrations } from "../../../src/workbook/tables/titrations";
import { openMemory } from "../../host/open-memory";
import { planned, recorded } from "../../host/contract-recording";
import { fryerLot } from "../record/records";
import { logbookOf } from "./logbooks";

describe("a first record", () => {
  it("says all that it makes", async () => {
    const plan = await planned(openMemory(), fryerLot);
    const count = titrations.columns.length;
    expect(plan.summary).toBe(
      "A new sheet Titrations with the table Titrations; the titration is its first row, row 4.",
    );
    expect(plan.makes[1]).toContain(`The table Titrations: ${count} headings in A3:`);
    expect(plan.makes[2]).toContain("Stage, Oil, Titrant base, Strength set by");
    expect(plan.mustConfirm).toEqual([]);
    expect(plan.cells.every(({ now }) => now === "")).toBe(true);
    expect(plan.cells.find(({ heading }) => heading === "Lot")?.address).toBe("Titrations!B4");
  });

  it("leaves headings with notes and widths, words to choose from, formats and rows that stay", async () => {
    const host = openMemory();
    await recorded(host, fryerLot);
    const sheet = host.book.sheets[1];
    expect(sheet?.frozenRows).toBe(3);
    for (const [
      column,
      { heading, note, width, format, choices },
    ] of titrations.columns.entries()) {
      const top = sheet?.cells[`2,${column}`];
      expect([top?.value, top?.note]).toEqual([heading, note]);
      expect(sheet?.widths[column]).toBe(width);
      const body = sheet?.cells[`3,${column}`];
      if (format !== undefined) expect(body?.format).toBe(format);
      expect(body?.words).toEqual(choices);
    }
  });

  it("writes the formulas after the table they name is there", async () => {
    const { steps } = await planned(openMemory(), fryerLot);
    const table = steps.findIndex((step) => step.do === "add-table");
    const formulas = steps.flatMap((step, index) =>
      step.do === "set-cells" && step.contents.flat().some(({ kind }) => kind === "formula")
        ? [index]
        : [],
    );
    expect(formulas).toHaveLength(1);
    expect(formulas[0]).toBeGreaterThan(table);
  });

  it("takes another sheet name when that one is taken, in any case, and says so", async () => {
    const host = openMemory(
      logbookOf({ headings: ["Ferry"], name: "Ferries", sheet: "TITRATIONS" }),
    );
    const plan = await planned(host, fryerLot);
    expect(plan.block.sheet).toBe("Titrations 2");
    expect(plan.remarks).toEqual([
      {
        sentence: "A sheet called Titrations is there already: the new one is called Titrations 2.",
      },
    ]);
    const before = host.book.sheets[0];
    expect(await recorded(host, fryerLot)).toMatchObject({ kind: "recorded", differences: [] });
    expect(host.book.sheets[0]).toEqual(before);
  });

  it("is refused when the table's name means something else, or no sheet can be added", async () => {
    const named = openMemory();
    named.change((book) => (book.definedNames.titrations = "Sheet1!A1"));
    expect(await planTitration(named, fryerLot)).toMatchObject({
      sentence: expect.stringContaining("is used for something else in this workbook") as string,
    });
    const closed = openMemory();
    closed.change((book) => (book.isProtected = true));
    expect(await planTitration(closed, fryerLot)).toMatchObject({
      sentence: expect.stringContaining("is protected against new sheets") as string,
    });
  });
});
