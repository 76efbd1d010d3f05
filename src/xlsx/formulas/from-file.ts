/**
 * A formula as a cell shows it, from how a file holds it: our functions by their own names, the marks
 * of newer functions and of LET's and LAMBDA's names taken away, # and @ for the functions that stand
 * for them. A formula that cannot be read keeps its text but for what its tokens show.
 */
import { isProblem } from "../../core/problem/problem";
import { namespace } from "../../functions/names";
import { linkedId, plainName, titreIdOf } from "../../sheet/formula/names";
import { joinsReferences } from "../../sheet/formula/operators";
import { readFormula } from "../../sheet/formula/read";
import { remembered } from "../../sheet/formula/remembered";
import { withBrackets } from "../../sheet/formula/span";
import { type Replacement, splice } from "../../sheet/formula/splice";
import { type Token, tokensOf } from "../../sheet/formula/token";
import type { Expression } from "../../sheet/formula/tree";
import { type Node, nodesOf, partsOf } from "../../sheet/formula/walk";
import { isReadable } from "../../sheet/formula/readable";

const isMarked = /_xl/i;
const fileMark = /^_(?:xlfn|xlws|xludf)\./i;
const nameMark = /^_(?:xlpm|xleta)\./i;

function shownName(name: string): string {
  const id = titreIdOf(name);
  if (id !== undefined) return `${namespace}.${id}`;
  return fileMark.test(name) ? plainName(name) : name.replace(nameMark, "");
}

function unmarked(formula: string): string {
  const tokens = tokensOf(formula);
  const isLinkOfOurs = (index: number): boolean => {
    const [link, mark, name] = tokens.slice(index, index + 3) as (Token | undefined)[];
    return (
      link?.kind === "sheet" &&
      mark?.text === "!" &&
      name?.kind === "function" &&
      linkedId(`${link.text}!`, name.text) !== undefined
    );
  };
  return tokens
    .map(({ kind, text }, index) => {
      if (kind === "function" || kind === "name") return shownName(text);
      const isDropped = isLinkOfOurs(index) || (text === "!" && isLinkOfOurs(index - 1));
      return isDropped ? "" : text;
    })
    .join("");
}

/** What a function stands for that is a sign before or after its one argument. */
function signOf(node: Node): { readonly isBefore: boolean; readonly of: Expression } | undefined {
  if (node.kind !== "call" || node.link !== "" || node.arguments.length !== 1) return undefined;
  const name = node.name.toUpperCase();
  const of = node.arguments[0] as Expression;
  return name === "SINGLE" || name === "ANCHORARRAY"
    ? { isBefore: name === "SINGLE", of }
    : undefined;
}

/** Beside one of these a sign would be read as that of the whole, or run together with a cell. */
const bindsTighter = (node: Node): boolean =>
  (node.kind === "binary" && joinsReferences(node.operator)) ||
  (node.kind === "postfix" && node.operator === "#") ||
  signOf(node)?.isBefore === false;

/** E1# for ANCHORARRAY(E1), @A1:A3 for SINGLE(A1:A3). */
function withSigns(formula: string): string {
  const read = readFormula(formula);
  if (isProblem(read)) return formula;
  const replaced: Replacement[] = [];
  const isKept = new Set<Node>();
  const isHeld = new Set<Node>();
  for (const node of nodesOf(read.tree)) {
    // What is called in turn, SINGLE(F)(1), is written with no sign.
    if (node.kind === "applied") isKept.add(node.applies);
    if (bindsTighter(node)) for (const part of partsOf(node)) isHeld.add(part);
    const sign = isKept.has(node) ? undefined : signOf(node);
    if (!sign) continue;
    const { of, isBefore } = sign;
    const isWhole = of.brackets !== undefined || of.kind === "reference" || of.kind === "call";
    const isOpen = isHeld.has(node) && node.brackets === undefined;
    const { start, end } = withBrackets(of);
    const before = (isOpen ? "(" : "") + (isBefore ? "@" : "") + (isWhole ? "" : "(");
    const after = (isWhole ? "" : ")") + (isBefore ? "" : "#") + (isOpen ? ")" : "");
    replaced.push({ start: node.start, end: start, text: before });
    replaced.push({ start: end, end: node.end, text: after });
  }
  return splice(formula, replaced);
}

/** @example formulaFromFile("_xldudf_TITRE_DOSE(A1)+_xlfn.STDEV.S(B:B)") // "=TITRE.DOSE(A1)+STDEV.S(B:B)" */
export const formulaFromFile = (stored: string): string =>
  isMarked.test(stored) ? fromMarked(stored) : `=${stored}`;

const fromMarked = remembered((stored) => {
  if (!isReadable(stored)) return `=${stored}`;
  const plain = `=${unmarked(stored)}`;
  return /_xlfn\.(?:ANCHORARRAY|SINGLE)\(/i.test(stored) ? withSigns(plain) : plain;
});
