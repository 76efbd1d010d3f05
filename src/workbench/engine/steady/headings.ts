/**
 * References to tables, in a spelling that the embedded engine can read. It stumbles over marks in a
 * heading (# [ ] ' : , and quotation marks) and never reads another formula right after, tells capitals
 * from small letters, and takes the column before the table for one it does not know.
 */
import type { Nullable } from "@univerjs/core";
import { type ISuperTableService, SuperTableService } from "@univerjs/engine-formula";
import { targetOf } from "../../../sheet/formula/reference";
import { tokensOf } from "../../../sheet/formula/token";
import { isReadable } from "../../../sheet/formula/readable";

/** Private use: no heading holds these. */
const firstPrivate = 0xe000;

/** The heading with each mark put aside where no reader looks for it. @example plainHeading("Lot #") */
const plainHeading = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9_]/g, (mark) =>
      mark.charCodeAt(0) < 128 ? String.fromCharCode(firstPrivate + mark.charCodeAt(0)) : mark,
    );

/** The headings of a table and their places. One it has not is an error of the formula that asks. */
class Headings extends Map<string, number> {
  override set(heading: string, place: number): this {
    const plain = plainHeading(heading);
    return super.has(plain) ? this : super.set(plain, place);
  }

  override get(heading: string): number {
    const place = super.get(plainHeading(heading));
    if (place === undefined) throw new Error("The table has no such column.");
    return place;
  }
}

type Table = Parameters<SuperTableService["registerTable"]>[2];

export class SteadyTables extends SuperTableService {
  override registerTable(unit: string, name: string, table: Table): void {
    const titleMap = new Headings();
    for (const [heading, place] of table.titleMap) titleMap.set(heading, place);
    super.registerTable(unit, name, { ...table, titleMap });
  }
}

const sections: Readonly<Record<string, string>> = {
  all: "#All",
  data: "#Data",
  headers: "#Headers",
  totals: "#Totals",
  "this row": "#This Row",
};

const named = (tables: Iterable<string>, name: string): string =>
  [...tables].find((table) => table.toLowerCase() === name.toLowerCase()) ?? name;

/** @param tables the names of the workbook's tables */
export function withPlainHeadings(formula: string, tables: Iterable<string>): string {
  if (!formula.includes("[") || !isReadable(formula)) return formula;
  return tokensOf(formula)
    .map(({ kind, text }) => {
      const target = kind === "structured" ? targetOf({ text, shape: "structured" }) : undefined;
      if (target?.kind !== "structured" || target.table === "") return text;
      const [first, last] = target.columns.map((column) => `[${plainHeading(column)}]`);
      const columns = last === undefined ? first : `${first ?? ""}:${last}`;
      const parts = [
        ...target.sections.map((section) => `[${sections[section] ?? ""}]`),
        ...(columns === undefined ? [] : [columns]),
      ];
      const inner =
        parts.length === 1 && last === undefined ? parts.join("") : `[${parts.join(",")}]`;
      return `${named(tables, target.table)}${parts.length === 0 ? "" : inner}`;
    })
    .join("");
}

/** The names of the tables of a workbook. */
export const tableNames = (tables: ISuperTableService, unit: Nullable<string>) =>
  tables.getTableMap(unit || "")?.keys() ?? [];
