/** The numbers-only copy: every formula goes, every value stays. */
import { splice, type Replacement } from "../../sheet/formula/splice";
import { relationshipTypes } from "../../xlsx/package/names";
import { removeContentType } from "../../xlsx/package/content-types";
import type { Package } from "../../xlsx/package/package";
import { removeRelationships, targetOf } from "../../xlsx/package/relationships";
import { newCell } from "../../xlsx/patch/cell-xml";
import { withFormula } from "../../xlsx/patch/formula-text";
import { type CellContext, CellReader } from "../../xlsx/read/cells";
import { type Budget, type RawCell, scanSheet } from "../../xlsx/read/sheet-scan";
import type { WorkbookPart } from "../../xlsx/read/workbook-part";
import { withAttribute } from "../../xlsx/xml/tag";
import { childOf, childrenOf, type Node, readTree } from "../../xlsx/xml/tree";
import { mayCallUs } from "./converter";
import type { Facts, KnownTable } from "./facts";
import type { Tally } from "./report";
import { ruleFormulas } from "./parts/rule-formulas";

/** The text of a formula's answer becomes a text that was typed. */
function withoutFormula(text: string, raw: RawCell, values: CellReader): Replacement[] {
  if (!raw.formula) return [];
  if (raw.type !== "str") return withFormula(text, raw, undefined);
  const value = values.cellValue(raw) ?? "";
  const plan = value === "" ? ({ kind: "nothing" } as const) : ({ kind: "value", value } as const);
  const marks = { prefix: raw.tag.prefix, style: raw.style, dynamicMark: undefined };
  return [{ start: raw.tag.start, end: raw.end, text: newCell(raw, plan, marks) }];
}

function dropInSheet(
  file: Package,
  sheet: { readonly name: string; readonly part: string },
  context: Omit<CellContext, "part" | "budget">,
  budget: Budget,
  tally: Tally,
): void {
  const text = file.need(sheet.part);
  const values = new CellReader({ ...context, part: sheet.part, budget });
  const changes: Replacement[] = [];
  const visitor = {
    cell(raw: RawCell) {
      if (!raw.formula) return;
      tally.formulas += 1;
      changes.push(...withoutFormula(text, raw, values));
    },
  };
  const { frame } = scanSheet(sheet.part, text, visitor, budget);
  for (const { label } of ruleFormulas({ listed: sheet, frame })) {
    tally.leave(label, "a rule holds a formula and no value");
  }
  if (changes.length === 0) return;
  tally.sheets.add(sheet.name);
  file.set(sheet.part, splice(text, changes));
}

const removed = ({ start, end }: Node): Replacement => ({ start, end, text: "" });

/** A column of a table no longer fills itself, and its total is a figure. */
function dropInTable(file: Package, table: KnownTable, tally: Tally): void {
  const text = file.need(table.part);
  const columns = childrenOf(childOf(readTree(table.part, text), "tableColumns"), "tableColumn");
  const changes = columns.flatMap((column) => {
    const formulas = ["calculatedColumnFormula", "totalsRowFormula"].flatMap(
      (local) => childOf(column, local) ?? [],
    );
    const { start, openEnd: end } = column;
    const own = text.slice(start, end);
    const tag = withAttribute(own, "totalsRowFunction", undefined);
    const label = tag === own ? [] : [{ start, end, text: tag }];
    return [...label, ...formulas.map(removed)];
  });
  if (changes.length === 0) return;
  tally.sheets.add(table.sheet);
  file.set(table.part, splice(text, changes));
}

/** The order of calculation lists formulas, and there are none any more. */
function dropChain(file: Package, workbookPart: string): void {
  const part = targetOf(file, workbookPart, relationshipTypes.calculationChain);
  if (part === undefined || !file.has(part)) return;
  file.remove(part);
  removeRelationships(file, workbookPart, part);
  removeContentType(file, part);
}

export function dropFormulas(
  file: Package,
  workbook: WorkbookPart,
  facts: Facts,
  context: Omit<CellContext, "part" | "budget">,
  budget: Budget,
  tally: Tally,
): void {
  for (const sheet of workbook.sheets) {
    if (sheet.kind === "cells") dropInSheet(file, sheet, context, budget, tally);
  }
  for (const table of facts.tables) dropInTable(file, table, tally);
  for (const { name, text } of facts.names) {
    if (mayCallUs(text)) tally.leave(`the name ${name}`, "a name holds a formula and no value");
  }
  if (tally.formulas > 0) dropChain(file, workbook.part);
}
