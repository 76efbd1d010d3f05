/** The selected cell by way of the host port: the cell first, then whatever its formula refers to. */
import { areaName } from "../../sheet/cell-name";
import { type CellContent, type Cells, type Host, isFault } from "../../sheet/port";
import { lookupFor } from "../../workbook/planning/what-it-reads";
import type { ShownCell } from "./shown-cell";

const isError = (content: CellContent): content is { readonly error: string } =>
  typeof content === "object";

const shownContent = (content: CellContent): string => {
  if (isError(content)) return content.error;
  return typeof content === "boolean" ? String(content).toUpperCase() : String(content);
};

const firstOf = <T>(rows: readonly (readonly T[])[]): T | undefined => rows[0]?.[0];

/** Undefined when nothing can be read, for example while a cell is being edited. */
export async function readSelection(host: Host): Promise<ShownCell | undefined> {
  const found = await host.read([{ ask: "selection" }]);
  const cells = isFault(found)
    ? undefined
    : found.find((each): each is Cells => each.kind === "cells");
  if (!cells) return undefined;
  const { block } = cells;
  const formula = firstOf(cells.formulas) ?? "";
  const value = firstOf(cells.values) ?? "";
  return {
    sheet: block.sheet,
    address: areaName({ ...block, rows: 1, columns: 1 }),
    formula,
    // what a formula elsewhere spilled here looks like what was put in
    ...(formula !== "" && isError(value) ? { error: value.error } : {}),
    ...(formula === "" && typeof value === "string" ? { text: value } : {}),
    shown: shownContent(value),
    note: "",
    lookup: await lookupFor(host, formula, block),
  };
}
