/**
 * Where the lines of a sheet, its rows or its columns, go when some are put in or taken out: the one
 * mapping that everything else goes by. Lines count from 0.
 */
import { sheetLimits } from "../../../sheet/spreadsheet-limits";
import type { Area } from "../../../sheet/area";
import { refuse } from "../../problem";
import type { LinesAct } from "../act";

export type Axis = "row" | "column";

export class Lines {
  readonly axis: Axis;
  readonly isInserting: boolean;
  readonly sheet: string;
  /** The first line that is put in, or taken out. */
  readonly at: number;
  readonly count: number;
  /** How many lines a sheet has. */
  readonly all: number;

  constructor(act: LinesAct) {
    this.axis = act.do === "insert-rows" || act.do === "delete-rows" ? "row" : "column";
    this.isInserting = "before" in act;
    this.sheet = act.sheet;
    this.at = "before" in act ? act.before : act.first;
    this.count = act.count;
    this.all = this.axis === "row" ? sheetLimits.rows : sheetLimits.columns;
    const isSound = [this.at, this.count].every(Number.isSafeInteger);
    if (!isSound || this.at < 0 || this.count < 1 || this.at + this.count > this.all) {
      const place = `${this.axis}s ${String(this.at + 1)} to ${String(this.at + this.count)}`;
      refuse({ code: "cannot-shift", sheet: this.sheet, place, trouble: "bad-lines" });
    }
  }

  /** The line after those that are taken out; for lines put in, the first one that moves. */
  get after(): number {
    return this.isInserting ? this.at : this.at + this.count;
  }

  /** By how much the lines behind move. */
  get by(): number {
    return this.isInserting ? this.count : -this.count;
  }

  /** Where a line goes; undefined when it is taken out, or pushed off the end. */
  line(line: number): number | undefined {
    if (line < this.at) return line;
    if (line < this.after) return undefined;
    return line + this.by < this.all ? line + this.by : undefined;
  }

  /** Where a line goes that cannot be lost: one that is taken out goes where the next one goes. */
  near(line: number): number {
    return this.line(line) ?? Math.min(this.at, this.all - 1);
  }

  /**
   * Where the lines from one to another go. They grow when lines are put in between them, shrink when
   * some of them are taken out; undefined when none is left. All lines of a sheet stay all of them.
   */
  span(first: number, last: number): readonly [number, number] | undefined {
    if (first === 0 && last === this.all - 1) return [first, last];
    if (this.isInserting) {
      const [from, to] = [first, last].map((line) => (line < this.at ? line : line + this.by));
      if (from === undefined || to === undefined || from >= this.all) return undefined;
      return [from, Math.min(to, this.all - 1)];
    }
    const from = first < this.at ? first : Math.max(first, this.after) + this.by;
    const to = last < this.after ? Math.min(last, this.at - 1) : last + this.by;
    return from > to ? undefined : [from, to];
  }

  /** Where an area of the sheet goes; undefined when nothing is left of it. */
  area(area: Area): Area | undefined {
    const [line, many] =
      this.axis === "row" ? (["row", "rows"] as const) : (["column", "columns"] as const);
    const span = this.span(area[line], area[line] + area[many] - 1);
    return span && { ...area, [line]: span[0], [many]: span[1] - span[0] + 1 };
  }

  /** Would what stands in an area be parted: by lines put in, or as only some of it is taken out? */
  cuts(first: number, last: number): boolean {
    if (this.isInserting) return first < this.at && this.at <= last;
    return first < this.after && this.at <= last && !(this.at <= first && last < this.after);
  }
}
