/** How the sheets of a workbook are printed, as its file or its book says; carried by the grid's snapshot. */
import type { IWorkbookData } from "@univerjs/core";
import type { Area } from "../../sheet/area";
import type { Book } from "../../sheet/book";
import { limits } from "../../xlsx/limits";
import { chartsOfBook } from "../charts/of-book";
import { withCharts } from "../charts/in-snapshot";
import { blocksNamed } from "../charts/blocks-named";
import type { OpenedFile } from "../file/opened-file";
import type { PrintState } from "../file/print-state";

export interface SheetPrint {
  readonly area?: Area;
  /** Rows that stand again at the top of each page. */
  readonly repeatRows?: { readonly row: number; readonly rows: number };
  readonly isLandscape?: boolean;
  /** The row that begins the second page. */
  readonly secondPage?: number;
}

type Custom = Pick<IWorkbookData, "custom">;
type BySheet = Readonly<Record<string, SheetPrint>>;

function ofFile({ sheets, names }: OpenedFile): BySheet {
  const blocks = (sheet: string, name: string) =>
    blocksNamed(
      names.find((each) => each.sheet === sheet && each.name === name)?.refersTo.slice(1) ?? "",
    ) ?? [];
  return Object.fromEntries(
    sheets.map(({ name, isLandscape }) => {
      const areas = blocks(name, "_xlnm.Print_Area");
      const [area] = areas;
      const rows = blocks(name, "_xlnm.Print_Titles").find(
        ({ columns }) => columns === limits.columns,
      );
      const print: SheetPrint = {
        ...(area && areas.length === 1 ? { area } : {}),
        ...(rows ? { repeatRows: rows } : {}),
        ...(isLandscape === undefined ? {} : { isLandscape }),
      };
      return [name, print];
    }),
  );
}

const ofBook = ({ sheets }: Book): BySheet =>
  Object.fromEntries(
    sheets.map(({ name, print }) => [
      name,
      {
        ...(print?.area ? { area: print.area } : {}),
        ...(print?.repeatRows ? { repeatRows: print.repeatRows } : {}),
        ...(print?.landscape === undefined ? {} : { isLandscape: print.landscape }),
        ...(print?.secondPage === undefined ? {} : { secondPage: print.secondPage }),
      },
    ]),
  );

const carried = (charts: Custom, printing: BySheet): Custom => ({
  custom: { ...charts.custom, printing },
});

export const carriedOfFile = (file: OpenedFile): Custom =>
  carried(withCharts(file.charts), ofFile(file));

export const carriedOfBook = (book: Book): Custom =>
  carried(withCharts(chartsOfBook(book)), ofBook(book));

export const printOf = ({ custom }: Custom, sheet: string): SheetPrint =>
  (custom?.printing as BySheet | undefined)?.[sheet] ?? {};

/** As the pane asked for it since the file was opened: carried by the first cell of the sheet. */
export const printAsked = (state: PrintState | undefined): SheetPrint => {
  if (state === undefined) return {};
  const { rows, columns, landscape, secondPage } = state;
  return {
    area: { row: 0, column: 0, rows, columns },
    isLandscape: landscape,
    ...(secondPage === undefined ? {} : { secondPage }),
  };
};
