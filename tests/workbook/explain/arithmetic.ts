/**
 * Works out an equation with its figures as it is shown: × ÷ −, lists in braces, mean and sum. Nothing
 * of the code it checks is used but the formula reader.
 */
import type { Expression } from "../../../src/sheet/formula/tree";
import { treeOf } from "../../sheet/formula/trees";

type Figures = number | number[];

const list = (value: Figures): number[] => (Array.isArray(value) ? value : [value]);
const total = (values: number[]): number => values.reduce((sum, value) => sum + value, 0);

const functions: Record<string, (values: number[]) => number> = {
  MEAN: (values) => total(values) / values.length,
  SUM: total,
  MAX: (values) => Math.max(...values),
  MIN: (values) => Math.min(...values),
};

const signs: Record<string, (a: number, b: number) => number> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  // Doubles: 2.35 less 2.25 is a hair more than 0.1.
  "<=": (a, b) => Number(a - b < 1e-9),
};

function each(work: (a: number, b: number) => number, left: Figures, right: Figures): Figures {
  if (!Array.isArray(left) && !Array.isArray(right)) return work(left, right);
  const [a, b] = [list(left), list(right)];
  const at = (values: number[], place: number) => values[values.length === 1 ? 0 : place] ?? NaN;
  return Array.from({ length: Math.max(a.length, b.length) }, (_, place) =>
    work(at(a, place), at(b, place)),
  );
}

function valueOf(tree: Expression): Figures {
  switch (tree.kind) {
    case "number":
      return tree.value;
    case "array":
      return tree.rows
        .flat()
        .map((constant) => Number(constant.kind === "number" && constant.value));
    case "prefix":
      return list(valueOf(tree.operand)).map((value) => -value);
    case "binary": {
      const work = signs[tree.operator];
      if (work) return each(work, valueOf(tree.left), valueOf(tree.right));
      break;
    }
    case "call": {
      const work = functions[tree.name.toUpperCase()];
      const given = tree.arguments.flatMap((argument) =>
        argument.kind === "omitted" ? [] : list(valueOf(argument)),
      );
      if (work) return work(given);
      break;
    }
  }
  throw new Error(`not arithmetic: ${tree.kind}`);
}

/** The figures an equation comes to. */
export const workedOut = (equation: string): number[] =>
  list(
    valueOf(
      treeOf(equation.replace(/×/g, "*").replace(/÷/g, "/").replace(/−/g, "-").replace(/≤/g, "<=")),
    ),
  );
