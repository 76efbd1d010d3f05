/** What a reference refers to: its sheet or sheets, and its cells, name or part of a table. */
import { parseA1Range, parseStructRef } from "@borgar/fx";
import type { Reference } from "./tree";

export interface SheetName {
  /** The number or the name of a linked workbook. */
  readonly workbook?: string;
  /** Without quotation marks; "" when only a workbook is named. */
  readonly first: string;
  /** The last sheet of a range of sheets. */
  readonly last?: string;
}

/** Rows and columns from 0, edges included; undefined where a whole row or column runs on. */
export interface Edges {
  readonly top: number | undefined;
  readonly left: number | undefined;
  readonly bottom: number | undefined;
  readonly right: number | undefined;
}

export type Target =
  | { readonly kind: "cells"; readonly edges: Edges }
  | { readonly kind: "name"; readonly name: string }
  | {
      readonly kind: "structured";
      /** "" in a formula inside the table itself. */
      readonly table: string;
      /** "this row", "headers", "data", "totals", "all". */
      readonly sections: readonly string[];
      /** None: all of them. Two: the first to the last. */
      readonly columns: readonly string[];
    }
  | { readonly kind: "lost" };

const prefix = /^(?:'((?:[^']|'')*)'|((?:\[[^\]]+\])?[^[\]'!]*))!/;
const named = /^(?:(.*)\[([^\]]+)\])?([^:]*)(?::(.*))?$/s;

/** The sheet a reference names, or undefined for the formula's own. */
export function sheetOf({ text }: Pick<Reference, "text">): SheetName | undefined {
  const found = prefix.exec(text);
  if (!found) return undefined;
  const written = found[1]?.replace(/''/g, "'") ?? found[2] ?? "";
  const [, path, workbook, first = "", last] = named.exec(written) ?? [];
  return {
    first,
    ...(workbook === undefined ? {} : { workbook: (path ?? "") + workbook }),
    ...(last === undefined ? {} : { last }),
  };
}

/** What a reference names on its sheet. */
export function targetOf({ text, shape }: Pick<Reference, "text" | "shape">): Target {
  const body = text.replace(prefix, "");
  if (shape === "lost") return { kind: "lost" };
  if (shape === "name") return { kind: "name", name: body };
  if (shape === "structured") {
    const { table = "", sections = [], columns = [] } = parseStructRef(body) ?? {};
    return { kind: "structured", table, sections, columns };
  }
  const range = parseA1Range(body);
  if (!range) return { kind: "lost" };
  const edge = (value: number | null | undefined) => value ?? undefined;
  const edges: Edges = {
    top: edge(range.top),
    left: edge(range.left),
    bottom: edge(range.bottom),
    right: edge(range.right),
  };
  return { kind: "cells", edges };
}
