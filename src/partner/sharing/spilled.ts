/** A1#, all that a cell's formula spills over: in plain functions, the cells it took in the file. */
import { areaName } from "../../sheet/cell-name";
import { targetOf } from "../../sheet/formula/reference";
import { sheetOf } from "../../sheet/formula/reference";
import type { Reference } from "../../sheet/formula/tree";
import type { Node } from "../../sheet/formula/walk";
import type { Builder } from "./workings/builder";
import { fixedBlock, type Located } from "./workings/located";
import { locate } from "./workings/locate";
import { noTwin } from "./no-twin";
import { restored } from "./pieces";
import { sheetPrefix } from "../../sheet/sheet-prefix";

function anchorOf(node: Node): Reference | undefined {
  if (node.kind === "postfix" && node.operator === "#") {
    return node.operand.kind === "reference" ? node.operand : undefined;
  }
  if (node.kind !== "call" || !/^(?:_xlfn\.)?ANCHORARRAY$/i.test(node.name)) return undefined;
  const [given] = node.arguments;
  return given?.kind === "reference" ? given : undefined;
}

export function spillOf(node: Node, builder: Builder): Located | undefined {
  const anchor = anchorOf(node);
  if (!anchor) return undefined;
  const { facts, home, pieces } = builder.around;
  locate(anchor, builder.around);
  const text = restored(anchor.text, pieces).replaceAll("$", "");
  const target = targetOf({ text, shape: anchor.shape });
  const sheet = sheetOf({ text })?.first ?? home.sheet;
  const { top = 0, left = 0 } = target.kind === "cells" ? target.edges : {};
  const area = facts.spillAt(sheet, top, left);
  if (!area) return noTwin(`${text} spills over nothing in the file`);
  const block = {
    top: area.row,
    left: area.column,
    bottom: area.row + area.rows - 1,
    right: area.column + area.columns - 1,
  };
  const fixed = areaName(area).replace(/[A-Z]+|\d+/g, "$$$&");
  return fixedBlock(sheet, block, () => sheetPrefix(sheet) + fixed);
}
