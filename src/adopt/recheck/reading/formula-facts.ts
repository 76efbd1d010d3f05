/** What a cell's formula is made of: which columns it reads, which figures stand in it. */
import { isProblem } from "../../../core/problem/problem";
import { titreCallId } from "../../../sheet/formula/names";
import { readFormula } from "../../../sheet/formula/read";
import { targetOf } from "../../../sheet/formula/reference";
import type { Expression, Reference } from "../../../sheet/formula/tree";
import { nodesOf } from "../../../sheet/formula/walk";
import type { LogbookMapping } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";

export interface FormulaFacts {
  readonly roles: ReadonlySet<RoleId>;
  readonly numbers: readonly number[];
  readonly callsUs: boolean;
  /** A sum divided by a figure written out: SUM(C5:E5)/3. */
  readonly dividesSumBy: number | undefined;
}

type RolesOf = (reference: Reference) => readonly RoleId[];

function rolesIn(mapping: LogbookMapping): RolesOf {
  const byColumn = new Map(mapping.columns.map(({ column, role }) => [column, role]));
  const byHeading = new Map(
    mapping.columns.map(({ heading, role }) => [heading.toLowerCase(), role]),
  );
  const constants = mapping.constants.flatMap(({ role, from }) =>
    from.kind === "cell" ? [{ ...from, role }] : [],
  );
  return (reference) => {
    const target = targetOf(reference);
    if (target.kind === "structured") {
      return target.columns.flatMap((name) => byHeading.get(name.toLowerCase()) ?? []);
    }
    if (target.kind !== "cells") return [];
    const { left, right, top, bottom } = target.edges;
    if (left === undefined || right === undefined) return [];
    const lone = constants.find(
      ({ row, column }) => top === row && bottom === row && left === column && right === column,
    );
    if (lone) return [lone.role];
    return Array.from({ length: Math.min(right - left + 1, 60) }, (_, at) =>
      byColumn.get(left + at),
    ).filter((role) => role !== undefined);
  };
}

function isSum(part: Expression | undefined, roles: RolesOf): boolean {
  if (part?.kind === "call" && part.name.toUpperCase() === "SUM") return true;
  if (part?.kind !== "binary" || part.operator !== "+") return false;
  const isTitre = (each: Expression): boolean =>
    each.kind === "reference" && roles(each).includes("titre");
  return (isSum(part.left, roles) || isTitre(part.left)) && isTitre(part.right);
}

function factsOf(text: string, roles: RolesOf): FormulaFacts | undefined {
  const formula = readFormula(text);
  if (isProblem(formula)) return undefined;
  const read = new Set<RoleId>();
  const numbers: number[] = [];
  let callsUs = false;
  let dividesSumBy: number | undefined;
  for (const node of nodesOf(formula.tree)) {
    if (node.kind === "reference") roles(node).forEach((role) => read.add(role));
    if (node.kind === "number") numbers.push(node.value);
    if (node.kind === "call" && titreCallId(node) !== undefined) callsUs = true;
    const divides =
      node.kind === "binary" &&
      node.operator === "/" &&
      node.right.kind === "number" &&
      isSum(node.left, roles);
    if (divides) dividesSumBy = (node.right as { value: number }).value;
  }
  return { roles: read, numbers, callsUs, dividesSumBy };
}

/** Reads each form of formula once: in a column they differ in their row's number alone. */
export function formulaReader(
  mapping: LogbookMapping,
): (text: string, row: number) => FormulaFacts | undefined {
  const roles = rolesIn(mapping);
  const known = new Map<string, FormulaFacts | undefined>();
  return (text, row) => {
    if (text === "") return undefined;
    const form = text.replace(new RegExp(`(?<=[A-Z])\\$?${String(row + 1)}(?!\\d)`, "gi"), "#");
    if (!known.has(form)) known.set(form, factsOf(text, roles));
    return known.get(form);
  };
}
