/**
 * The charts on the sheets of an open workbook. A part that cannot be read is a chart all the same, which
 * cannot be drawn: nothing here refuses a file.
 */
import type { FileChart } from "./file-chart";
import { limits } from "./limits";
import type { Workbook } from "./model";
import { relationshipTypes } from "./package/names";
import type { Package } from "./package/package";
import { relationshipsOf, targetOf } from "./package/relationships";
import { answer, isFileProblem } from "./problem";
import { anchoredIn } from "./read/charts/anchors";
import { readChart } from "./read/charts/picture";
import { readTheme, type Theme } from "./read/colours";
import { readWorkbookPart } from "./read/workbook-part";
import { type Node, readTree } from "./xml/tree";

const treeOf = (file: Package, part: string): Node => readTree(part, file.need(part));

/** Undefined where it cannot be had. */
function tried<T>(work: () => T): T | undefined {
  const got = answer(work);
  return isFileProblem(got) ? undefined : got;
}

function themeOf(file: Package): Theme {
  const part = targetOf(file, readWorkbookPart(file).part, relationshipTypes.theme);
  return readTheme(part === undefined ? undefined : treeOf(file, part));
}

function chartsOn(file: Package, sheet: string, part: string, theme: Theme): FileChart[] {
  const drawing = targetOf(file, part, relationshipTypes.drawing);
  if (drawing === undefined) return [];
  const targets = new Map(relationshipsOf(file, drawing).map((each) => [each.id, each.target]));
  return anchoredIn(treeOf(file, drawing))
    .slice(0, limits.charts)
    .map(({ leadsBy, ...anchored }) => {
      const target = targets.get(leadsBy);
      const read = tried(() => readChart(treeOf(file, target ?? ""), theme));
      return { sheet, ...anchored, ...(read ?? { kind: "damaged" }) };
    });
}

/** In the order in which they lie over each other, the lowest first. */
export function chartsIn({ file, sheets }: Pick<Workbook, "file" | "sheets">): FileChart[] {
  const theme = tried(() => themeOf(file)) ?? [];
  return sheets.flatMap(({ kind, name, part }) =>
    kind === "cells" ? (tried(() => chartsOn(file, name, part, theme)) ?? []) : [],
  );
}
