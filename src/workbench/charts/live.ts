/** A chart with what its cells hold now: what the file last saw stays where they are not in the workbook. */
import type { Block } from "../../sheet/area";
import type {
  ChartFigures,
  ChartGroup,
  ChartPicture,
  ChartSeries,
  ChartText,
} from "../../xlsx/file-chart";
import { limits } from "../../xlsx/limits";
import type { GivenCell } from "../engine/cells";
import { shownValue } from "../engine/formatted";
import { blocksNamed } from "./blocks-named";

/** The cells of the open workbook. */
export interface ChartCells {
  /** Rows and columns that may hold something; undefined where there is no such sheet. */
  extent(sheet: string): { readonly rows: number; readonly columns: number } | undefined;
  value(sheet: string, row: number, column: number): GivenCell;
  format(sheet: string, row: number, column: number): string | undefined;
  isHidden(sheet: string, row: number, column: number): boolean;
  /** What a name comes to; undefined where it cannot be said now. */
  lookup(name: string): GivenCell[][] | undefined;
}

interface Found {
  readonly value: GivenCell;
  readonly format: string | undefined;
}

/** A name of the workbook, be it said with its sheet or not. */
const name = /^(?:(?:'(?:[^']|'')+'|[^'!()]+)!)?[\p{L}_\\][\p{L}\p{N}_.\\]*$/u;

function inBlock(block: Block, cells: ChartCells, leavesHidden: boolean): Found[] {
  const extent = cells.extent(block.sheet);
  if (!extent) return [];
  const { sheet, row, column } = block;
  const found: Found[] = [];
  // beyond what holds anything there is nothing to draw
  const lastRow = Math.min(row + block.rows, Math.max(extent.rows, row + 1));
  const lastColumn = Math.min(column + block.columns, Math.max(extent.columns, column + 1));
  for (let down = row; down < lastRow; down++) {
    for (let across = column; across < lastColumn; across++) {
      if (found.length >= limits.chartPoints) return found;
      if (leavesHidden && cells.isHidden(sheet, down, across)) continue;
      const value = cells.value(sheet, down, across);
      found.push({ value, format: cells.format(sheet, down, across) });
    }
  }
  return found;
}

/** Undefined where what the file last saw is all there is. */
function found(refersTo: string, cells: ChartCells, leavesHidden: boolean): Found[] | undefined {
  const blocks = blocksNamed(refersTo);
  if (blocks) {
    if (blocks.some(({ sheet }) => !cells.extent(sheet))) return undefined;
    return blocks.flatMap((block) => inBlock(block, cells, leavesHidden));
  }
  if (!name.test(refersTo)) return undefined;
  const values = cells.lookup(refersTo.replace(/^.*!/s, ""))?.flat();
  return values?.map((value) => ({ value, format: undefined }));
}

/** An error and an empty text are gaps; yes and no are 1 and 0, as spreadsheets draw them. */
function pointOf(value: GivenCell): number | string | undefined {
  if (value === null || typeof value === "object") return undefined;
  if (typeof value === "boolean") return Number(value);
  return value === "" ? undefined : value;
}

function liveFigures(
  figures: ChartFigures,
  cells: ChartCells,
  leavesHidden: boolean,
): ChartFigures {
  const { refersTo } = figures;
  const now = refersTo === undefined ? undefined : found(refersTo, cells, leavesHidden);
  if (!now) return figures;
  const format =
    now.find(({ value, format: of }) => typeof value === "number" && of !== undefined)?.format ??
    figures.format;
  return {
    ...figures,
    values: now.map(({ value }) => pointOf(value)),
    ...(format === undefined ? {} : { format }),
  };
}

function liveText(text: ChartText | undefined, cells: ChartCells): ChartText | undefined {
  if (text?.refersTo === undefined) return text;
  const now = found(text.refersTo, cells, false);
  if (!now) return text;
  const words = now.map(({ value, format }) => shownValue(value, format)).filter(Boolean);
  return { ...text, text: words.join(" ") };
}

const named = <Key extends "name" | "title">(key: Key, text: ChartText | undefined) =>
  (text ? { [key]: text } : {}) as Partial<Record<Key, ChartText>>;

export function livePicture(picture: ChartPicture, cells: ChartCells): ChartPicture {
  const { leavesHidden } = picture;
  const series = (each: ChartSeries): ChartSeries => ({
    ...each,
    ...named("name", liveText(each.name, cells)),
    ...(each.across ? { across: liveFigures(each.across, cells, leavesHidden) } : {}),
    up: liveFigures(each.up, cells, leavesHidden),
  });
  const group = (each: ChartGroup): ChartGroup => ({ ...each, series: each.series.map(series) });
  return {
    ...picture,
    ...named("title", liveText(picture.title, cells)),
    groups: picture.groups.map(group),
    axes: picture.axes.map((axis) => ({
      ...axis,
      ...named("title", liveText(axis.title, cells)),
    })),
  };
}
