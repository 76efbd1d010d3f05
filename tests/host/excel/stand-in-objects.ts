/** Tables and sheets of the stand-in. */
import {
  isNameTaken,
  type MemorySheet,
  type MemoryTable,
  sheetNamed,
  tableNamed,
  usedBlock,
} from "../memory/book";
import { errorsIn, resultsOf } from "../memory/answers";
import { doStep } from "../memory/steps";
import type { Block } from "../../../src/sheet/port";
import { calculation } from "../calculation";
import { type Members, ProgramError, remote } from "./remote";
import { chartsOf } from "./stand-in-charts";
import { listsOn, notesOf } from "./stand-in-counts";
import { blockOf, type Model, rangeAt, sheetToChange, type Talk } from "./stand-in-range";

export function tableAt(on: Talk, find: () => MemoryTable | undefined, orNull = false): object {
  const { model, talk } = on;
  const table = (): MemoryTable => {
    const found = find();
    if (!found) throw new ProgramError("ItemNotFound");
    return found;
  };
  return remote(talk, "table", {
    ...(orNull ? { isNull: () => find() === undefined } : {}),
    reads: { name: () => table().name, showTotals: () => table().hasTotals },
    sets: {
      name: (name: string) => {
        if (isNameTaken(model.book, name)) throw new ProgramError("ItemAlreadyExists");
        table().name = name;
      },
    },
    changes: {
      resize: (range: object) => {
        sheetToChange(model, table().block.sheet);
        doStep(model.book, { do: "grow-table", name: table().name, block: blockOf(range) });
      },
    },
    gives: {
      getRange: () => rangeAt(on, () => table().block),
      getHeaderRowRange: () => rangeAt(on, () => ({ ...table().block, rows: 1 })),
    },
    parts: {
      worksheet: () => remote(talk, "worksheet", { reads: { name: () => table().block.sheet } }),
      autoFilter: () =>
        remote(talk, "autoFilter", { reads: { isDataFiltered: () => table().isFiltered } }),
    },
  });
}

/** What is printed of a sheet. */
function pageLayoutOf({ model, talk }: Talk, sheet: () => MemorySheet): object {
  const changed = (): MemorySheet => sheetToChange(model, sheet().name);
  return remote(talk, "pageLayout", {
    sets: {
      orientation: (way: string) => {
        const { print } = changed();
        if (print) changed().print = { ...print, landscape: way === "Landscape" };
      },
      zoom: (zoom: { horizontalFitToPages?: number; verticalFitToPages?: number }) => {
        const isOneWide = zoom.horizontalFitToPages === 1;
        const isOneTall = [1, undefined].includes(zoom.verticalFitToPages);
        if (!isOneWide || !isOneTall) throw new ProgramError("InvalidArgument");
      },
    },
    changes: {
      setPrintArea: (range: object) => {
        changed().print = { block: blockOf(range), landscape: false };
      },
    },
  });
}

/** A break stands above the range it is given. */
const pageBreaksOf = ({ model, talk }: Talk, sheet: () => MemorySheet): object =>
  remote(talk, "horizontalPageBreaks", {
    changes: {
      add: (range: object) => {
        const changed = sheetToChange(model, sheet().name);
        if (changed.print) changed.print = { ...changed.print, secondPage: blockOf(range).row };
      },
    },
  });

/** What the program finds by itself: the errors of formulas, on a sheet that is not protected. */
function errorsOn(on: Talk, sheet: () => MemorySheet): object {
  const { model, talk } = on;
  const blocks = (): Block[] => {
    if (sheet().isProtected) throw new ProgramError("AccessDenied");
    const used = usedBlock(sheet());
    return used ? errorsIn(used, resultsOf(model.book, calculation)) : [];
  };
  return remote(talk, "rangeAreas", {
    isNull: () => blocks().length === 0,
    reads: { areaCount: () => blocks().length },
    parts: {
      areas: () =>
        remote(talk, "areas", {
          reads: { items: () => blocks().map(rangeFacts) },
        }),
    },
  });
}

/** A range as an item of a list, with where it is. */
const rangeFacts = ({ row, column, rows, columns }: Block) => ({
  rowIndex: row,
  columnIndex: column,
  rowCount: rows,
  columnCount: columns,
});

export function sheetAt(
  on: Talk,
  find: () => MemorySheet | undefined,
  more: Pick<Members, "isNull" | "loaded"> = {},
): object {
  const { model, talk } = on;
  const sheet = (): MemorySheet => {
    const found = find();
    if (!found) throw new ProgramError("ItemNotFound");
    return found;
  };
  const used = () => usedBlock(sheet());
  return remote(talk, "sheet", {
    ...more,
    reads: { name: () => sheet().name },
    changes: {
      activate: () => void sheet(),
      delete: () => {
        const gone = sheet();
        model.isUndoLost = true;
        model.book.sheets = model.book.sheets.filter((each) => each !== gone);
        model.book.tables = model.book.tables.filter(({ block }) => block.sheet !== gone.name);
      },
    },
    gives: {
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        rangeAt(on, () => ({ sheet: sheet().name, row, column, rows, columns })),
      getRange: () => ({
        getSpecialCellsOrNullObject: (type: string, holding?: string) => {
          if (type === "DataValidations") return listsOn(on, sheet);
          if (type !== "Formulas" || holding !== "Errors") throw new ProgramError(type);
          return errorsOn(on, sheet);
        },
      }),
      getUsedRangeOrNullObject: () =>
        rangeAt(
          on,
          () => used() ?? { sheet: sheet().name, row: 0, column: 0, rows: 1, columns: 1 },
          () => used() === undefined,
        ),
    },
    parts: {
      charts: () => chartsOf(on, sheet),
      notes: () => notesOf(on, sheet),
      protection: () =>
        remote(talk, "protection", {
          reads: { protected: () => sheet().isProtected },
          changes: {
            protect: () => (sheetToChange(model, sheet().name).isProtected = true),
            unprotect: () => (sheet().isProtected = false),
          },
        }),
      pageLayout: () => pageLayoutOf(on, sheet),
      horizontalPageBreaks: () => pageBreaksOf(on, sheet),
      freezePanes: () =>
        remote(talk, "freezePanes", {
          changes: {
            freezeRows: (rows: number) => (sheetToChange(model, sheet().name).frozenRows = rows),
          },
        }),
    },
  });
}

export const findTable = (model: Model, name: string) => () => tableNamed(model.book, name);
export const findSheet = (model: Model, name: string) => () => sheetNamed(model.book, name);
