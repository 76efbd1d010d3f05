/** Which cells a reference means, seen from the cell its formula stands in. */
import { parseA1Range } from "@borgar/fx";
import type { Block } from "../area";
import { sheetOf, targetOf } from "./reference";
import type { Reference } from "./tree";

/** A table as a host answers: its block, headings included. */
export interface KnownTable {
  readonly block: Block;
  readonly headings: readonly string[];
}

export type Meant =
  | { readonly kind: "block"; readonly block: Block }
  /** Only once this table is known can it be told. */
  | { readonly kind: "table-wanted"; readonly name: string }
  | { readonly kind: "unknown" };

const unknown: Meant = { kind: "unknown" };

function shapeOf(text: string): Reference["shape"] | undefined {
  if (text.includes("[")) return "structured";
  return parseA1Range(text.replace(/^.*!/, "")) ? "cell" : undefined;
}

function inTable(
  table: KnownTable,
  from: Block,
  sections: readonly string[],
  columns: readonly string[],
): Meant {
  const { block, headings } = table;
  const at = columns.map((name) =>
    headings.findIndex((heading) => heading.toLowerCase() === name.toLowerCase()),
  );
  if (at.includes(-1)) return unknown;
  const first = at[0] ?? 0;
  const last = at[at.length - 1] ?? headings.length - 1;
  const across = { sheet: block.sheet, column: block.column + first, columns: last - first + 1 };
  if (!sections.includes("this row")) {
    return { kind: "block", block: { ...across, row: block.row + 1, rows: block.rows - 1 } };
  }
  const isInside =
    from.sheet === block.sheet && from.row > block.row && from.row < block.row + block.rows;
  return isInside ? { kind: "block", block: { ...across, row: from.row, rows: 1 } } : unknown;
}

/**
 * @param text a reference as written: B2:D2, Sheet2!A1, Table[[#This Row],[Column]]
 * @param from the cell of the formula
 * @param tables the tables known so far, by name
 */
export function meantBy(text: string, from: Block, tables: ReadonlyMap<string, KnownTable>): Meant {
  const shape = shapeOf(text);
  if (shape === undefined) return unknown;
  const target = targetOf({ text, shape });
  if (target.kind === "structured") {
    const table = tables.get(target.table);
    return table
      ? inTable(table, from, target.sections, target.columns)
      : { kind: "table-wanted", name: target.table };
  }
  if (target.kind !== "cells") return unknown;
  const { top, left, bottom, right } = target.edges;
  if (top === undefined || left === undefined || bottom === undefined || right === undefined) {
    return unknown;
  }
  const sheet = sheetOf({ text })?.first ?? from.sheet;
  const size = { rows: bottom - top + 1, columns: right - left + 1 };
  return { kind: "block", block: { sheet, row: top, column: left, ...size } };
}
