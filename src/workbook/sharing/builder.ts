/** What is gathered while one formula is written in plain functions: gaps, helper cells, blocks. */
import type { Twin } from "../../functions/twin";
import { columnLetters } from "../column-letters";
import type { Expression } from "../formula/tree";
import type { Instance, Operand } from "./instance";
import type { Around, Located } from "./located";
import { noTwin } from "./no-twin";
import { markOf } from "./template";

/** Beyond any formula that a person has written. */
const mostChoices = 32;

interface MarkedHelper {
  readonly label: string;
  /** With marks. */
  readonly formula: string;
}

interface MarkedBlock {
  readonly label: string;
  readonly rows: readonly (readonly string[])[];
}

/** On the added sheet the first column says which cell the row is for. */
export const firstHelperColumn = 1;

/** Only this side of a condition is used: a helper cell of the other side stays empty. */
export interface Guard {
  /** The cell that holds the condition. */
  readonly condition: string;
  readonly when: boolean;
}

const guarded = (formula: string, { condition, when }: Guard): string =>
  when ? `IF(${condition},${formula},"")` : `IF(${condition},"",${formula})`;

export class Builder {
  readonly operands: Operand[] = [];
  readonly helpers: MarkedHelper[] = [];
  readonly blocks: MarkedBlock[] = [];
  readonly ids = new Set<string>();
  guards: readonly Guard[] = [];
  private choices = 0;

  constructor(
    /** The formula with stand-ins for its cells. */
    readonly canonical: string,
    readonly around: Around,
    readonly twinOf: (id: string) => Twin | undefined,
    /** Each call in a helper cell of its own, for formulas that would grow too long. */
    readonly isSpread: boolean,
  ) {}

  /** Each choice between two ranges doubles what is written. */
  countChoice(): void {
    this.choices += 1;
    if (this.choices > mostChoices) noTwin("it chooses between too many ranges");
  }

  mark(operand: Operand): string {
    this.operands.push(operand);
    return markOf(this.operands.length - 1);
  }

  textOf = ({ start, end }: Pick<Expression, "start" | "end">): string =>
    this.canonical.slice(start, end);

  /** A cell of the added sheet, in the row of the formula. */
  private place(row: (instance: Instance) => number, column: number): Operand {
    const { facts } = this.around;
    return (instance, mode) => {
      const { isFixed } = instance.home;
      const dollar = isFixed ? "$" : "";
      const cell = `${dollar}${columnLetters(column)}${dollar}${String(row(instance) + 1)}`;
      return mode === "here" ? facts.workingsPrefix + cell : cell;
    };
  }

  private helperAt(index: number): string {
    return this.mark(this.place(({ room }) => room.row, firstHelperColumn + index));
  }

  helper(label: string, formula: string): string {
    const whole = this.guards.reduceRight(guarded, formula);
    const known = this.helpers.findIndex((each) => each.formula === whole);
    if (known >= 0) return this.helperAt(known);
    this.helpers.push({ label, formula: whole });
    return this.helperAt(this.helpers.length - 1);
  }

  /** Helper cells side by side, in the row of the formula. */
  line(label: string, formulas: readonly string[]): Located {
    const start = this.helpers.length;
    for (const [index, formula] of formulas.entries()) {
      const whole = this.guards.reduceRight(guarded, formula);
      const numbered = formulas.length > 1 ? `${label} ${String(index + 1)}` : label;
      this.helpers.push({ label: numbered, formula: whole });
    }
    const at = (index: number) =>
      this.place(({ room }) => room.row, firstHelperColumn + start + index);
    const last = at(formulas.length - 1);
    return {
      rows: 1,
      columns: formulas.length,
      whole: (instance, mode) =>
        formulas.length === 1
          ? last(instance, mode)
          : `${at(0)(instance, mode)}:${last(instance, "workings")}`,
      cell: (_, column) => at(column),
    };
  }

  /** A table of helper cells, right of the single ones and beginning in the row of the formula. */
  block(label: string, rows: readonly (readonly string[])[]): Located {
    const before = [...this.blocks];
    this.blocks.push({
      label,
      rows: rows.map((row) => row.map((cell) => this.guards.reduceRight(guarded, cell))),
    });
    // The single ones are all known by the time that a formula is written out.
    const left = () =>
      firstHelperColumn +
      this.helpers.length +
      before.reduce((sum, block) => sum + (block.rows[0]?.length ?? 0), 0);
    const at =
      (down: number, across: number): Operand =>
      (instance, mode) =>
        this.place(({ room }) => room.row + down, left() + across)(instance, mode);
    const columns = rows[0]?.length ?? 1;
    const last = at(rows.length - 1, columns - 1);
    return {
      rows: rows.length,
      columns,
      whole: (instance, mode) => `${at(0, 0)(instance, mode)}:${last(instance, "workings")}`,
      cell: at,
    };
  }
}
