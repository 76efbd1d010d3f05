/** One cell's edit made ready for the file: its value checked, its formula as files hold it. */
import { isOnSheet, named } from "../cell-address";
import { storedOn } from "./call-form";
import type { CellValue } from "../model";
import { refuse } from "../problem";
import type { Content, Dress } from "./edits";
import type { SheetDraft } from "./sheet-draft";
import { storedValue } from "./stored-value";
import { isFilling, type Plan, type StoredValue, type Wanted } from "./wanted";

export interface CellEdit extends Dress {
  readonly row: number;
  readonly column: number;
  readonly content: Content;
  /** The style of a cell that has none. */
  readonly base?: number | undefined;
}

type FormulaContent = Extract<Content, { kind: "formula" }>;

const dressOf = ({ as, format, look }: Dress): Dress => ({
  ...(as === undefined ? {} : { as }),
  ...(format === undefined ? {} : { format }),
  ...(look === undefined ? {} : { look }),
});

export class CellPlanner {
  constructor(
    private readonly sheet: SheetDraft,
    private readonly dates: 1900 | 1904,
  ) {}

  plan(edit: CellEdit): void {
    const { row, column, content, base } = edit;
    const cell = named(this.sheet.name, row, column);
    if (!isOnSheet(row, column)) refuse({ code: "outside-sheet", cell });
    const before = this.sheet.wanted.get(edit);
    const isDate =
      content.kind === "value" && typeof content.value === "object" && "date" in content.value;
    this.sheet.wanted.set({
      ...before,
      row,
      column,
      plan: this.overPlan(before?.plan, this.planned(edit, cell), cell),
      dress: { ...before?.dress, ...dressOf(edit) },
      ...(base === undefined ? {} : { base }),
      ...(isDate ? { isDate } : {}),
    });
  }

  /** An edit of a cell that an earlier edit of the same call is about. */
  private overPlan(before: Plan | undefined, now: Plan, cell: string): Plan {
    if (before && now.kind === "keep") return before;
    if (before?.kind === "formula" && now.kind === "result") {
      return { ...before, result: now.value as StoredValue };
    }
    if (before?.kind !== "spilled") return now;
    if (now.kind === "result") return { ...before, value: now.value as StoredValue };
    return refuse({ code: "in-array", cell, area: "an answer that is to be written there" });
  }

  private planned(edit: CellEdit, cell: string): Plan {
    const { content } = edit;
    switch (content.kind) {
      case "value": {
        const value = storedValue(content.value, cell, this.dates);
        return value === "" ? { kind: "nothing" } : { kind: "value", value };
      }
      case "formula":
        return this.formula(edit, content, cell);
      case "result":
        return { kind: "result", value: storedValue(content.value, cell, this.dates) };
      default:
        return content;
    }
  }

  private formula(edit: CellEdit, content: FormulaContent, cell: string): Plan {
    const table = content.formula.includes("[") ? this.sheet.tableAt(edit)?.name : undefined;
    const { text: formula, meant, isArray } = storedOn(this.sheet, content.formula, cell, table);
    const result =
      content.result === undefined ? undefined : storedValue(content.result, cell, this.dates);
    const { spilled } = content;
    const { row, column } = edit;
    if (!spilled) {
      const array = isArray ? { array: { row, column, rows: 1, columns: 1 } } : {};
      return { kind: "formula", formula, meant, result, ...array };
    }
    const rows = spilled.length;
    const columns = Math.max(1, ...spilled.map((cells) => cells.length));
    if (!isOnSheet(row + rows - 1, column + columns - 1)) {
      refuse({ code: "outside-sheet", cell });
    }
    this.spill(edit, spilled, cell);
    return { kind: "formula", formula, meant, result, array: { row, column, rows, columns } };
  }

  /** The answers beside and below the first one. */
  private spill(edit: CellEdit, spilled: readonly (readonly CellValue[])[], cell: string): void {
    for (const [down, values] of spilled.entries()) {
      for (const [across, value] of values.entries()) {
        if (down === 0 && across === 0) continue;
        const place = { row: edit.row + down, column: edit.column + across };
        const there = this.sheet.wanted.get(place);
        const name = named(this.sheet.name, place.row, place.column);
        if (there && isFilling(there)) {
          refuse({ code: "not-empty", cell: name, wanted: `the answer of ${cell}` });
        }
        const from = { row: edit.row, column: edit.column };
        const isEmptied = there?.plan.kind === "nothing";
        const shown = storedValue(value, name, this.dates);
        const plan: Plan = { kind: "spilled", value: shown, from, isEmptied };
        this.sheet.wanted.set({ ...place, plan, dress: dressOf(edit) } satisfies Wanted);
      }
    }
  }
}
