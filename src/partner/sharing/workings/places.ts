/**
 * Where on the added sheet helper cells stand. A formula finds its own beside it, so many rows up or
 * down, as long as the row that stands there is for its row. No two runs are as far from their formulas,
 * so that a formula filled down beyond its run never takes the figure of another for its own.
 */
import { heightOf, ownRowCell, type Run } from "./working-groups";

export class Places {
  private readonly distances = new Set<number>();

  constructor(
    /** The next free row. */
    public next: number,
  ) {}

  skip(rows: number): void {
    this.next += rows;
  }

  /** Gives each formula of a run its rows. */
  settle(run: Run): void {
    const isRun = run.length > 1;
    if (isRun) while (this.isTaken(run)) this.next += 1;
    const first = this.next;
    for (const member of run) {
      if (isRun) this.distances.add(this.next - member.home.row);
      member.room = { row: this.next, siblings: undefined };
      this.next += heightOf(member);
    }
    const last = run[run.length - 1]?.room.row ?? first;
    if (!isRun) return;
    for (const member of run) {
      if (ownRowCell(member) === undefined) continue;
      member.room = { row: member.room.row, siblings: [first, last] };
    }
  }

  private isTaken(run: Run): boolean {
    let row = this.next;
    for (const member of run) {
      if (this.distances.has(row - member.home.row)) return true;
      row += heightOf(member);
    }
    return false;
  }
}
