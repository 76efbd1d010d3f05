/**
 * A formula as a file holds it, from how a cell shows it. A formula that cannot be read is refused: a
 * spreadsheet program would call the whole file damaged.
 */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { storedName, titreCallId } from "../../sheet/formula/names";
import { type Formula, readFormula } from "../../sheet/formula/read";
import { withBrackets } from "../../sheet/formula/span";
import { type Replacement, splice } from "../../sheet/formula/splice";
import type { Binary, Call, Expression, Reference } from "../../sheet/formula/tree";
import { nodesOf, titreCalls } from "../../sheet/formula/walk";
import { refuse } from "../problem";
import { isArrayNatured } from "./array-nature";
import { markedName } from "./later-functions";
import { localNames } from "./local-names";
import { quotedSheet } from "./quoted-sheet";
import { longReference } from "./this-row";

const calledName = (call: Call): string | undefined => {
  const id = titreCallId(call);
  if (id !== undefined) return storedName(id);
  return call.link === "" ? markedName(call.name) : undefined;
};

function callReplaced(call: Call): Replacement[] {
  const name = calledName(call);
  return name === undefined ? [] : [{ ...call.nameAt, text: name }];
}

function wrapped(node: Expression, of: Expression, name: string): Replacement[] {
  const { start, end } = withBrackets(of);
  return [
    { start: node.start, end: start, text: `_xlfn.${name}(` },
    { start: end, end: node.end, text: ")" },
  ];
}

function referenceReplaced(reference: Reference, table: string | undefined): Replacement[] {
  const text = longReference(reference, table) ?? quotedSheet(reference);
  return text === undefined ? [] : [{ start: reference.start, end: reference.end, text }];
}

/** What two references share: a line break may stand for the space, but not every program takes it so. */
function spaced({ left, right }: Binary, written: string): Replacement[] {
  const [{ end: start }, { start: end }] = [withBrackets(left), withBrackets(right)];
  return /^ +$/.test(written.slice(start, end)) ? [] : [{ start, end, text: " " }];
}

function replacedIn(node: Expression, written: string, table: string | undefined): Replacement[] {
  switch (node.kind) {
    case "call":
      return callReplaced(node);
    case "postfix":
      return node.operator === "#" ? wrapped(node, node.operand, "ANCHORARRAY") : [];
    case "prefix":
      return node.operator === "@" ? wrapped(node, node.operand, "SINGLE") : [];
    case "binary":
      return node.operator === " " ? spaced(node, written) : [];
    case "reference":
      return referenceReplaced(node, table);
    default:
      return [];
  }
}

const storedText = (formula: Formula, table: string | undefined): string => {
  const replaced = [...nodesOf(formula.tree)].flatMap((node) =>
    replacedIn(node, formula.text, table),
  );
  const text = splice(formula.text, [...replaced, ...localNames(formula.tree)]);
  return text.trimStart().replace(/^=/, "");
};

/** What a formula was meant to say, for whoever reads it back. */
export interface Meant {
  /** As a cell shows it, with its equals sign. */
  readonly formula: string;
  /** The table it stands in. */
  readonly table: string | undefined;
}

/** XML has no place for these, and texts in formulas no escape that every program knows. */
const unwritable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/u;

export interface StoredFormula {
  /** No equals sign. */
  readonly text: string;
  readonly meant: Meant;
  /** It must be written as an array formula to mean what it means in a cell. */
  readonly isArray: boolean;
  /** It calls functions of ours. */
  readonly callsUs: boolean;
}

/**
 * @param cell how a sentence names the cell
 * @param table the table the cell stands in: what [@Lot] is a column of
 * @example storedFormula("=TITRE.DOSE(A1)+STDEV.S(B:B)", "Log!C2").text // "_xldudf_TITRE_DOSE(A1)+_xlfn.STDEV.S(B:B)"
 */
export function storedFormula(shown: string, cell: string, table?: string): StoredFormula {
  const formula = readFormula(shown);
  if (isProblem(formula)) {
    return refuse({ code: "broken-formula", cell, sentence: say(formula) });
  }
  if (unwritable.test(shown)) {
    const sentence = "the formula holds a character that no file can hold.";
    return refuse({ code: "broken-formula", cell, sentence });
  }
  const text = storedText(formula, table);
  const meant = { formula: shown.trimStart().startsWith("=") ? shown : `=${shown}`, table };
  const callsUs = titreCalls(formula.tree).length > 0;
  return { text, meant, isArray: isArrayNatured(formula.tree), callsUs };
}

/** Where it does not matter how the formula is worked out: in a name. */
export const formulaToFile = (shown: string, cell: string, table?: string): string =>
  storedFormula(shown, cell, table).text;
