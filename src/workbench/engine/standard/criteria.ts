/** Sums, counts and means of what meets a condition written as text: ">2", "oil*", "<>". */
import type { Standard } from "./adapter";
import { doubt } from "./doubt";
import { quotient } from "./operators";
import { total } from "./statistics";
import { compare, isClose } from "./compare";
import { type Cell, Fault, type Given, type Rows } from "./value";

type Test = (cell: Cell) => boolean;

const sign = /^(<=|>=|<>|<|>|=)?(.*)$/s;
const plainFigure = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?\s*$/i;

const pattern = (written: string): RegExp =>
  new RegExp(
    `^${written
      .replace(/~[*?~]|[*?]|[^*?]/gs, (mark) => {
        if (mark === "*") return ".*";
        if (mark === "?") return ".";
        return (mark.length > 1 ? mark.slice(1) : mark).replace(/[\\^$.*+?()[\]{}|]/g, "\\$&");
      })
      .replace(/~/g, "~")}$`,
    "is",
  );

function figureTest(operator: string, figure: number): Test {
  return (cell) => {
    if (typeof cell === "number" && (operator === "" || operator === "=")) {
      return isClose(cell, figure);
    }
    const difference =
      typeof cell === "number" ? (isClose(cell, figure) ? 0 : cell - figure) : undefined;
    if (typeof cell === "boolean") doubt();
    // whether text that looks like the figure is it, they do not agree on
    if (typeof cell === "string" && plainFigure.test(cell)) doubt();
    if (difference === undefined) return operator === "<>";
    if (operator === "<>") return difference !== 0;
    if (operator === "<") return difference < 0;
    if (operator === ">") return difference > 0;
    if (operator === "<=") return difference <= 0;
    return operator === ">=" ? difference >= 0 : difference === 0;
  };
}

function textTest(operator: string, written: string): Test {
  if (operator === "" || operator === "=" || operator === "<>") {
    const found = pattern(written);
    const isNot = operator === "<>";
    const isWild = /[*?~]/.test(written);
    return (cell) => {
      // a figure is text to some where marks stand for any text
      if (typeof cell === "boolean" || (isWild && typeof cell === "number")) doubt();
      return (typeof cell === "string" && found.test(cell)) !== isNot;
    };
  }
  if (/[*?~]/.test(written)) doubt();
  return (cell) => {
    if (typeof cell !== "string") return false;
    const order = compare(cell, written);
    if (operator === "<") return order < 0;
    if (operator === ">") return order > 0;
    return operator === "<=" ? order <= 0 : order >= 0;
  };
}

/** "" asked of what is empty: programs differ on whether an empty text is meant as well. */
function emptyTest(operator: string): Test {
  return (cell) => {
    if (cell === "" && operator !== "") doubt();
    const isEmpty = cell === null || (operator === "" && cell === "");
    return operator === "<>" ? cell !== null : isEmpty;
  };
}

export function testOf(criterion: Cell): Test {
  if (criterion instanceof Fault || typeof criterion === "boolean" || criterion === null) {
    doubt();
    if (criterion instanceof Fault) return () => false;
    return figureTest("=", Number(criterion));
  }
  if (typeof criterion === "number") return figureTest("=", criterion);
  const [, operator = "", written = ""] = sign.exec(criterion) ?? [];
  if (written === "") {
    if (operator !== "" && operator !== "=" && operator !== "<>") doubt();
    return emptyTest(operator);
  }
  if (plainFigure.test(written)) return figureTest(operator, Number(written));
  if (/\d/.test(written) && /^[\d\s./:,%$€£-]+$/.test(written)) doubt();
  if (/^(?:true|false)$/i.test(written) || written.startsWith("#")) doubt();
  return textTest(operator, written);
}

const criterionOf = (given: Given | undefined): Cell => given?.rows[0]?.[0] ?? null;

const flattened = new WeakMap<Rows, readonly Cell[]>();

/** Kept: one column is asked by every row of a table. */
function flat({ rows }: Given): readonly Cell[] {
  let found = flattened.get(rows);
  if (!found) flattened.set(rows, (found = rows.flat()));
  return found;
}

/** Which places of the blocks meet all conditions. */
function met(pairs: readonly Given[]): boolean[] {
  const [first] = pairs;
  if (!first) throw new Fault("#VALUE!");
  const size = [first.rows.length, first.rows[0]?.length].join();
  const found = new Array<boolean>(flat(first).length).fill(true);
  for (let at = 0; at < pairs.length; at += 2) {
    const block = pairs[at];
    if (!block || [block.rows.length, block.rows[0]?.length].join() !== size) {
      doubt();
      throw new Fault("#VALUE!");
    }
    const test = testOf(criterionOf(pairs[at + 1]));
    for (const [place, cell] of flat(block).entries()) found[place] &&= test(cell);
  }
  return found;
}

function chosen(of: Given, met: readonly boolean[]): number[] {
  const cells = flat(of);
  if (cells.length !== met.length) {
    doubt();
    throw new Fault("#VALUE!");
  }
  return cells.flatMap((cell, place) => {
    if (!met[place]) return [];
    if (cell instanceof Fault) throw cell;
    if (typeof cell === "boolean") doubt();
    return typeof cell === "number" ? [cell] : [];
  });
}

const mean = (figures: readonly number[]): number => quotient(total(figures), figures.length);

type Work = (figures: readonly number[]) => number;

/** The range that is summed stands last, and is the one that is asked when it is left out. */
const ofOne = (work: Work): Standard => ({
  least: 2,
  most: 3,
  kinds: "lvl",
  work: ([asked, criterion, summed]) => {
    if (!asked || !criterion) throw new Fault("#VALUE!");
    // figures that stand in no cells: some programs take none
    if (!asked.isRange) doubt();
    return work(chosen(summed ?? asked, met([asked, criterion])));
  },
});

/** The range that is summed stands first. */
const ofSeveral = (work: Work): Standard => ({
  least: 3,
  most: 255,
  kinds: "llvlvlvlvlvlvlvlvlvlvlv",
  work: ([summed, ...pairs]) => {
    if (!summed) throw new Fault("#VALUE!");
    return work(chosen(summed, met(pairs)));
  },
});

const counting = (most: number): Standard => ({
  least: 2,
  most,
  kinds: "lvlvlvlvlvlvlvlvlvlvlv",
  work: (pairs) => met(pairs).filter(Boolean).length,
});

export const criteria: Readonly<Record<string, Standard>> = {
  COUNTIF: counting(2),
  COUNTIFS: counting(255),
  SUMIF: ofOne(total),
  SUMIFS: ofSeveral(total),
  AVERAGEIF: ofOne(mean),
  AVERAGEIFS: ofSeveral(mean),
  MINIFS: ofSeveral((figures) => (figures.length === 0 ? 0 : Math.min(...figures))),
  MAXIFS: ofSeveral((figures) => (figures.length === 0 ? 0 : Math.max(...figures))),
};
