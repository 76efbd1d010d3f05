/** What must be known of a workbook to say which cells a formula means. */
import type { Area } from "../../sheet/area";
import type { Table } from "../../xlsx/model";
import type { Package } from "../../xlsx/package/package";
import { readTables } from "../../xlsx/read/tables";
import type { ListedSheet, WorkbookPart } from "../../xlsx/read/workbook-part";
import { attribute, count } from "../../xlsx/xml/scan";
import { childOf, childrenOf } from "../../xlsx/xml/tree";
import { sheetPrefix } from "../../sheet/sheet-prefix";
import { workingsName } from "./workings/workings-name";

export interface KnownTable extends Table {
  readonly sheet: string;
}

export interface KnownName {
  readonly name: string;
  /** As the file holds it. */
  readonly text: string;
  /** Known on this sheet alone. */
  readonly sheet: string | undefined;
}

const folded = (name: string): string => name.toLowerCase();

/** A name that nothing in a list has: "Workings", or "Workings 2". */
export function freeName(wanted: string, taken: readonly string[]): string {
  const known = new Set(taken.map(folded));
  let name = wanted;
  for (let number = 2; known.has(folded(name)); number++) name = `${wanted} ${String(number)}`;
  return name;
}

export class Facts {
  readonly sheets: readonly ListedSheet[];
  readonly tables: readonly KnownTable[];
  readonly names: readonly KnownName[];
  /** The sheet that is added for helper cells, where one is needed. */
  readonly workings: string;
  readonly workingsPrefix: string;
  /** Answers that spill, by the sheet and cell of their formula. */
  private readonly spills = new Map<string, Area>();

  constructor(file: Package, workbook: WorkbookPart) {
    this.sheets = workbook.sheets;
    this.tables = workbook.sheets.flatMap(({ name, part, kind }) =>
      kind === "cells" ? readTables(file, part).map((table) => ({ ...table, sheet: name })) : [],
    );
    const list = childOf(workbook.root, "definedNames");
    this.names = childrenOf(list, "definedName").map((node) => ({
      name: attribute(node, "name") ?? "",
      text: node.text,
      sheet: workbook.sheets[count(node, "localSheetId", -1)]?.name,
    }));
    this.workings = freeName(
      workingsName,
      workbook.sheets.map(({ name }) => name),
    );
    this.workingsPrefix = sheetPrefix(this.workings);
  }

  table(name: string): KnownTable | undefined {
    return this.tables.find((table) => folded(table.name) === folded(name));
  }

  tableAt(sheet: string, row: number, column: number): KnownTable | undefined {
    return this.tables.find(
      ({ area, sheet: own }) =>
        own === sheet &&
        row >= area.row &&
        row < area.row + area.rows &&
        column >= area.column &&
        column < area.column + area.columns,
    );
  }

  /** A sheet's own name goes before one of the workbook. */
  name(name: string, sheet: string): KnownName | undefined {
    const same = this.names.filter((each) => folded(each.name) === folded(name));
    return same.find((each) => each.sheet === sheet) ?? same.find((each) => !each.sheet);
  }

  addSpill(sheet: string, area: Area): void {
    this.spills.set(`${folded(sheet)}!${String(area.row)},${String(area.column)}`, area);
  }

  spillAt(sheet: string, row: number, column: number): Area | undefined {
    return this.spills.get(`${folded(sheet)}!${String(row)},${String(column)}`);
  }
}
