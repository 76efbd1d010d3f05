/** The charts of a workbook, carried by the snapshot that the grid opens: they belong to it, and go with it. */
import type { IWorkbookData } from "@univerjs/core";
import type { FileChart } from "../../xlsx/file-chart";

type Custom = Pick<IWorkbookData, "custom">;

export const withCharts = (charts: readonly FileChart[] | undefined): Custom =>
  charts && charts.length > 0 ? { custom: { charts } } : {};

export const chartsOf = ({ custom }: Custom): readonly FileChart[] =>
  (custom?.charts as readonly FileChart[] | undefined) ?? [];
