/**
 * A rule for cells (a conditional format, a validation) moved: its areas and its formulas, which are
 * written for the first of its cells and count from there. Each cell's rule goes on saying the same of the
 * same cells; where that takes different formulas for some of them, the rule is parted.
 */
import { isProblem } from "../../../core/problem/problem";
import type { Area, Place } from "../../../sheet/area";
import { readFormula } from "../../../sheet/formula/read";
import { SharedFormula } from "../../formulas/shared";
import { isSameSheet } from "../sheets/in-formula";
import type { Lines } from "./lines";
import { cornersOf, movedFormula } from "./moved-formula";

export interface Rule {
  readonly areas: readonly Area[];
  /** As files hold them. */
  readonly formulas: readonly string[];
}

/** Rules a rule may be parted into. */
const mostParts = 1000;

export class TooManyParts extends Error {}
export class Unreadable extends Error {}

const firstCell = (areas: readonly Area[]): Place => ({
  row: Math.min(...areas.map(({ row }) => row)),
  column: Math.min(...areas.map(({ column }) => column)),
});

const shiftedFrom = (formula: string, from: Place, to: Place): string =>
  new SharedFormula(formula, from.row, from.column).at(to.row, to.column);

interface Relative {
  /** Lines on the sheet that moves, counted from the first cell's line. */
  readonly offsets: ReadonlySet<number>;
  readonly inBlocks: ReadonlySet<number>;
  readonly isAny: boolean;
}

/** What of the formulas counts from the cell, on the axis that moves. */
function relativeOf({ formulas, areas }: Rule, home: string, lines: Lines): Relative {
  const base = firstCell(areas)[lines.axis];
  const offsets = new Set<number>();
  const inBlocks = new Set<number>();
  let isAny = false;
  for (const formula of formulas) {
    const read = readFormula(formula);
    const tree = isProblem(read) ? readFormula(`(${formula})`) : read;
    if (isProblem(tree)) throw new Unreadable();
    for (const { line, isMarked, isBlock, isMoving } of cornersOf(tree.tree, home, lines)) {
      if (isMarked) continue;
      isAny = true;
      if (isMoving) (isBlock ? inBlocks : offsets).add(line - base);
    }
  }
  return { offsets, inBlocks, isAny };
}

/** The lines of an area at which another formula may begin to be needed. */
function parting(first: number, last: number, own: boolean, relative: Relative, lines: Lines) {
  const at = new Set<number>([first]);
  const add = (line: number): void => {
    if (line > first && line <= last) at.add(line);
    if (at.size > mostParts) throw new TooManyParts();
  };
  if (relative.isAny && own) [lines.at, lines.after].forEach(add);
  for (const offset of [...relative.offsets, ...relative.inBlocks]) {
    [lines.at - offset, lines.after - offset].forEach(add);
  }
  // the ends of a block stop at the edge of what is taken out, one line after the other
  if (!lines.isInserting) {
    for (const offset of relative.inBlocks) {
      const from = Math.max(first, lines.at - offset);
      for (let line = from; line <= Math.min(last, lines.after - offset); line++) add(line);
    }
  }
  return [...at].sort((a, b) => a - b);
}

/** Where lines of an area are now; lines put in between two of its lines belong to it. */
function movedLines(from: number, to: number, last: number, lines: Lines) {
  const start = lines.line(from);
  if (start === undefined) return undefined;
  const isBefore = lines.isInserting && to === lines.at - 1 && to < last;
  const end = Math.min(start + (to - from) + (isBefore ? lines.count : 0), lines.all - 1);
  return { start, end };
}

/** Areas that lie on end along the axis, made one. */
function joined(areas: readonly Area[], { axis }: Lines): Area[] {
  const [line, many, other, others] =
    axis === "row"
      ? (["row", "rows", "column", "columns"] as const)
      : (["column", "columns", "row", "rows"] as const);
  const done: Area[] = [];
  for (const area of areas) {
    const before = done.at(-1);
    const isNext =
      before?.[other] === area[other] &&
      before[others] === area[others] &&
      before[line] + before[many] === area[line];
    if (isNext) done[done.length - 1] = { ...before, [many]: before[many] + area[many] };
    else done.push(area);
  }
  return done;
}

export function movedRules(rule: Rule, home: string, lines: Lines): Rule[] {
  const own = isSameSheet(home, lines.sheet);
  const relative = relativeOf(rule, home, lines);
  const base = firstCell(rule.areas);
  const [line, many] =
    lines.axis === "row" ? (["row", "rows"] as const) : (["column", "columns"] as const);
  const groups = new Map<string, { areas: Area[]; formulas: string[] }>();
  const take = (old: Place, area: Area): void => {
    const formulas = rule.formulas.map((formula) => {
      const here = shiftedFrom(formula, base, old);
      return shiftedFrom(movedFormula(here, home, lines) ?? here, area, { row: 0, column: 0 });
    });
    const key = formulas.join("\n");
    const group = groups.get(key);
    if (group) group.areas.push(area);
    else groups.set(key, { areas: [area], formulas });
  };
  for (const area of rule.areas) {
    const last = area[line] + area[many] - 1;
    if (!relative.isAny) {
      const moved = own ? lines.area(area) : area;
      const first = lines.isInserting
        ? area[line]
        : Math.max(area[line], area[line] < lines.at ? 0 : lines.after);
      if (moved) take({ ...area, [line]: first }, moved);
      continue;
    }
    const starts = parting(area[line], last, own, relative, lines);
    for (const [index, from] of starts.entries()) {
      const to = (starts[index + 1] ?? last + 1) - 1;
      const now = own ? movedLines(from, to, last, lines) : { start: from, end: to };
      if (!now) continue;
      take(
        { ...area, [line]: from },
        { ...area, [line]: now.start, [many]: now.end - now.start + 1 },
      );
    }
  }
  return [...groups.values()].map(({ areas, formulas }) => {
    const first = firstCell(areas);
    return {
      areas: joined(areas, lines),
      formulas: formulas.map((each) => shiftedFrom(each, { row: 0, column: 0 }, first)),
    };
  });
}
