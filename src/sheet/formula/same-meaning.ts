/**
 * Do two formulas say the same, whatever spelling each is in? A file writes Log[[#This Row],[Lot]] for
 * [@Lot], _xldudf_TITRE_DOSE for TITRE.DOSE, ANCHORARRAY(A1) for A1#; a host other capitals and spaces.
 */
import { spills } from "../../functions/names";
import { plainName, titreCallId } from "./names";
import { sheetOf, targetOf } from "./reference";
import type { Call, Reference } from "./tree";
import { type Node, partsOf } from "./walk";

const localMark = /^_xlpm\./i;
const low = (text: string): string => text.toLowerCase();

/** A cell, block or lines as they are written: dollar signs mean something. */
const written = ({ text, shape }: Reference): string => {
  const body = shape === "structured" ? text : text.slice(text.lastIndexOf("!") + 1);
  return low(body).replace(localMark, "");
};

/** @param table the table that the formula stands in, which it need not name */
function saidByReference(reference: Reference, table: string): unknown[] {
  const target = targetOf(reference);
  if (target.kind === "structured") {
    const columns = target.columns.map(low);
    return ["table", low(target.table || table), target.sections.map(low).sort(), columns];
  }
  const { workbook = "", first = "", last = "" } = sheetOf(reference) ?? {};
  return [target.kind, low(workbook), low(first), low(last), written(reference)];
}

function saidByCall(call: Call): unknown[] {
  const id = titreCallId(call);
  if (id !== undefined) return ["ours", id];
  const name = plainName(call.name.replace(localMark, ""));
  if (call.link === "" && call.arguments.length === 1) {
    if (name === "SINGLE") return ["prefix", "@"];
    if (name === "ANCHORARRAY") return ["postfix", "#"];
  }
  return ["call", low(call.link), name];
}

/** What a node says itself, its parts left out. */
function said(node: Node, table: string): unknown[] {
  switch (node.kind) {
    case "omitted":
    case "applied":
      return [node.kind];
    case "number":
    case "text":
    case "boolean":
    case "error":
      return [node.kind, node.value];
    case "array":
      return [node.kind, node.rows.map((row) => row.map((each) => said(each, table)))];
    case "reference":
      return saidByReference(node, table);
    case "call":
      return saidByCall(node);
    case "prefix":
    case "postfix":
    case "binary":
      return [node.kind, node.operator];
  }
}

/** The program shows =@TITRE.DOSE(A1) for a call that a file holds plainly: of one value, it is the same. */
function withoutSign(node: Node): Node {
  const of =
    node.kind === "prefix" && node.operator === "@"
      ? node.operand
      : node.kind === "call" && node.link === "" && plainName(node.name) === "SINGLE"
        ? node.arguments[0]
        : undefined;
  const id = of?.kind === "call" ? titreCallId(of) : undefined;
  return of && id !== undefined && !spills(id) ? of : node;
}

/** Without recursion, so no depth matters. `table` is the table that both stand in. */
export function isSameMeaning(one: Node, other: Node, table: string): boolean {
  const waiting: [Node, Node][] = [[one, other]];
  for (let pair = waiting.pop(); pair; pair = waiting.pop()) {
    const [left, right] = [withoutSign(pair[0]), withoutSign(pair[1])];
    if (JSON.stringify(said(left, table)) !== JSON.stringify(said(right, table))) return false;
    const parts = partsOf(right);
    if (partsOf(left).length !== parts.length) return false;
    for (const [index, part] of partsOf(left).entries()) waiting.push([part, parts[index] as Node]);
  }
  return true;
}
