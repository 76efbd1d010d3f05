/** The words of the list under a cell, and of the help beside it: each function has its own. */
import { LocaleType, Univer, UniverInstanceType } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { IDescriptionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { describe, expect, it } from "vitest";
import "../../src/workbench/engine/node";
import { bookOf } from "./book";

describe("a function that the list under a cell offers", () => {
  it("is told in words, with each of its arguments", async () => {
    const { descriptions, engineFunctions } =
      await import("../../src/workbench/engine/registration");
    const { words } = await import("../../src/workbench/grid/locale");
    const { snapshotOf } = await import("../../src/workbench/snapshot");
    const univer = new Univer({
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: words },
    });
    try {
      univer.registerPlugin(UniverFormulaEnginePlugin, { function: engineFunctions });
      univer.registerPlugin(UniverSheetsPlugin);
      univer.registerPlugin(UniverSheetsFormulaPlugin, { description: descriptions });
      univer.createUnit(UniverInstanceType.UNIVER_SHEET, snapshotOf(bookOf([[1]])));
      const service = univer.__getInjector().get(IDescriptionService);
      const offered = service.getSearchListByNameFirstLetter("");
      const names = offered.map(({ name }) => name);
      expect(names).toEqual(expect.arrayContaining(["SUM", "STDEV.P", "LET", "TITRE.CATALYST"]));
      const told = offered.map(({ name, desc }) => {
        const help = service.getFunctionInfo(name);
        const asked = help?.functionParameter.flatMap((each) => [each.name, each.detail]) ?? [];
        return { name, says: [desc, help?.description ?? "", ...asked] };
      });
      const isKey = (text: string) => text.trim() === "" || /^[\w-]+(\.[\w-]+){2,}$/.test(text);
      expect(told.filter(({ says }) => says.some(isKey))).toEqual([]);
    } finally {
      univer.dispose();
    }
  });
});
