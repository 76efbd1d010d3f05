/** What is gathered while one formula is written in plain functions: gaps, helper cells, blocks. */
import { columnLetters } from "../../../sheet/cell-name";
import type { Twin } from "../../../functions/twin";
import type { Expression } from "../../../sheet/formula/tree";
import type { Operand } from "./standing";
import type { Around, Located } from "./located";
import { noTwin } from "../no-twin";
import { markOf, marksIn } from "./template";

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

/** On the added sheet the first two columns say which cell the row is for. */
export const rowColumn = 1;
export const firstHelperColumn = 2;

/** Only this side of a condition is used: a helper cell of the other side stays empty. */
export interface Guard {
  readonly condition: string;
  readonly when: boolean;
}

const guarded = (formula: string, { condition, when }: Guard): string =>
  when ? `IF(${condition},${formula},"")` : `IF(${condition},"",${formula})`;

/** "reading 2, mL": the figure before the unit. */
const numbered = (label: string, number: number): string =>
  label.replace(/^[^,]*/, (name) => `${name} ${String(number)}`);

export class Builder {
  readonly operands: Operand[] = [];
  readonly helpers: MarkedHelper[] = [];
  readonly blocks: MarkedBlock[] = [];
  readonly ids = new Set<string>();
  guards: readonly Guard[] = [];
  private choices = 0;
  /** Operands that are helper cells, and their marks. */
  private readonly onWorkings = new WeakSet<Operand>();
  private readonly helperMarks = new Set<number>();

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
    if (this.onWorkings.has(operand)) this.helperMarks.add(this.operands.length);
    this.operands.push(operand);
    return markOf(this.operands.length - 1);
  }

  textOf = ({ start, end }: Pick<Expression, "start" | "end">): string =>
    this.canonical.slice(start, end);

  private known(operand: Operand): Operand {
    this.onWorkings.add(operand);
    return operand;
  }

  /** A cell of the added sheet, so many rows below the first of the formula. */
  private place(down: number, column: () => number): Operand {
    const { facts } = this.around;
    return this.known(({ home, room }, mode) => {
      const dollar = home.isFixed ? "$" : "";
      const cell = `${dollar}${columnLetters(column())}${dollar}${String(room.row + down + 1)}`;
      return mode === "here" ? facts.workingsPrefix + cell : cell;
    });
  }

  /** A helper cell that a formula outside shows: looked up by its row where it is not beside it. */
  private linked(index: number): Operand {
    const { workingsPrefix } = this.around.facts;
    const column = firstHelperColumn + index;
    const direct = this.place(0, () => column);
    const rows = ([first, last]: readonly [number, number], letters: string) =>
      `${workingsPrefix}${letters}$${String(first + 1)}:${letters}$${String(last + 1)}`;
    return this.known((instance, mode) => {
      const cell = direct(instance, mode);
      const { row, siblings } = instance.room;
      if (mode === "workings" || !siblings) return cell;
      const key = columnLetters(rowColumn);
      const isBeside = `${workingsPrefix}${key}${String(row + 1)}=ROW()`;
      const found = `MATCH(ROW(),${rows(siblings, key)},0)`;
      return `IF(${isBeside},${cell},INDEX(${rows(siblings, columnLetters(column))},${found}))`;
    });
  }

  /** Does a formula go through helper cells? */
  private isHelped(formula: string): boolean {
    return marksIn(formula).some((mark) => this.helperMarks.has(mark));
  }

  /**
   * What a call comes to, for a formula outside the added sheet: the formula itself, or, where it goes
   * through helper cells, one more of them.
   */
  answer(label: string, formula: string): string {
    if (!this.isSpread && !this.isHelped(formula)) return formula;
    this.helpers.push({ label, formula: this.guards.reduceRight(guarded, formula) });
    return this.mark(this.linked(this.helpers.length - 1));
  }

  private helperAt(index: number): string {
    return this.mark(this.place(0, () => firstHelperColumn + index));
  }

  helper(label: string, formula: string): string {
    const whole = this.guards.reduceRight(guarded, formula);
    const known = this.helpers.findIndex((each) => each.formula === whole);
    if (known >= 0) return this.helperAt(known);
    this.helpers.push({ label, formula: whole });
    return this.helperAt(this.helpers.length - 1);
  }

  private range(first: Operand, last: Operand): Operand {
    return this.known((instance, mode) => `${first(instance, mode)}:${last(instance, "workings")}`);
  }

  /** Helper cells side by side, in the row of the formula. */
  line(label: string, formulas: readonly string[]): Located {
    const start = this.helpers.length;
    for (const [index, formula] of formulas.entries()) {
      const whole = this.guards.reduceRight(guarded, formula);
      const own = formulas.length > 1 ? numbered(label, index + 1) : label;
      this.helpers.push({ label: own, formula: whole });
    }
    const at = (index: number) => this.place(0, () => firstHelperColumn + start + index);
    const last = at(formulas.length - 1);
    return {
      rows: 1,
      columns: formulas.length,
      whole: formulas.length === 1 ? last : this.range(at(0), last),
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
    const at = (down: number, across: number) => this.place(down, () => left() + across);
    const columns = rows[0]?.length ?? 1;
    const last = at(rows.length - 1, columns - 1);
    return {
      rows: rows.length,
      columns,
      whole: this.range(at(0, 0), last),
      cell: at,
    };
  }
}
