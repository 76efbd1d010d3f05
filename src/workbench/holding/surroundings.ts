/** The open workbook's sheets, names and tables, as holding asks about them. */
import type { Injector, Workbook } from "@univerjs/core";
import { IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import { IDefinedNamesService, ISuperTableService } from "@univerjs/engine-formula";
import { tokensOf } from "../../sheet/formula/token";
import type { Surroundings } from "./blocks-read";
import { blockOf } from "./engine-blocks";

const everywhere = "AllDefaultWorkbook";

const fixedCells =
  /(?:^|!)\$[A-Z]{1,3}\$\d+(?::\$[A-Z]{1,3}\$\d+)?$|^[^!]*!?\$[A-Z]{1,3}:\$[A-Z]{1,3}$/i;

/** What a name stands for may depend on where it is used: not so where every reference is fixed. */
const isFixed = (refersTo: string): boolean =>
  tokensOf(refersTo).every(({ kind, text }) => kind !== "cells" || fixedCells.test(text));

export function surroundingsOf(injector: Injector, unit: string): Surroundings {
  const workbook = () =>
    injector.get(IUniverInstanceService).getUnit<Workbook>(unit, UniverInstanceType.UNIVER_SHEET);
  const tables = () => [...(injector.get(ISuperTableService).getTableMap(unit) ?? [])];
  return {
    get sheets() {
      const all = workbook()?.getSheets() ?? [];
      return new Map(all.map((sheet) => [sheet.getName().toLowerCase(), sheet.getSheetId()]));
    },
    refersTo(name, sheet) {
      const all = Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(unit) ?? {});
      const found = all.filter((each) => each.name.toLowerCase() === name.toLowerCase());
      const [only] = found;
      if (!only || found.length > 1) return undefined;
      const { localSheetId, formulaOrRefString: text } = only;
      const isKnown = !localSheetId || localSheetId === everywhere || localSheetId === sheet;
      return isKnown && isFixed(text) ? `=${text.replace(/^=/, "")}` : undefined;
    },
    table(name, { sheet, row, column }) {
      const found = tables().find(([known, { sheetId, range }]) =>
        name === ""
          ? sheetId === sheet &&
            range.startRow <= row &&
            // its totals, which the grid leaves out, belong to it
            row <= range.endRow + 1 &&
            range.startColumn <= column &&
            column <= range.endColumn
          : known.toLowerCase() === name.toLowerCase(),
      );
      if (!found) return undefined;
      const [, { sheetId, range }] = found;
      const block = blockOf({ unitId: unit, sheetId, range });
      return { ...block, bottom: block.bottom + 1 };
    },
  };
}
