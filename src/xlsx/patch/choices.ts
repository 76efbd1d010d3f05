/** Words offered in cells: a list to choose from that lets other words through. */
import { areaName } from "../../sheet/cell-name";
import { named, overlaps, readArea } from "../cell-address";
import { limits } from "../limits";
import type { Area } from "../../sheet/area";
import { refuse } from "../problem";
import { escapeAttribute, escapeText } from "../xml/escape";
import { growing, listXml } from "../xml/insert";
import { attribute } from "../xml/scan";
import { prefixed } from "../xml/tag";
import { childOf, childrenOf, type Node } from "../xml/tree";
import { intoSheet, type Placed, within } from "./frame";

export interface Choice {
  readonly area: Area;
  readonly words: readonly string[];
  readonly help?: string;
}

function refuseOverlap(sheet: string, list: Node | undefined, choices: readonly Choice[]): void {
  const taken = childrenOf(list, "dataValidation").flatMap((node) =>
    (attribute(node, "sqref") ?? "").split(/\s+/).flatMap((ref) => readArea(ref) ?? []),
  );
  for (const { area } of choices) {
    if (!taken.some((each) => overlaps(each, area))) continue;
    refuse({ code: "choice-there", cell: named(sheet, area.row, area.column) });
  }
}

function choiceXml(sheet: string, prefix: string, { area, words, help }: Choice): string {
  const list = words.join(",");
  if (list.length > limits.choice || words.some((word) => /[,"]/.test(word))) {
    refuse({ code: "choice-too-long", cell: named(sheet, area.row, area.column) });
  }
  const name = prefixed(prefix, "dataValidation");
  const formula = prefixed(prefix, "formula1");
  const type = words.length > 0 ? ' type="list"' : "";
  const prompt =
    help === undefined ? "" : ` prompt="${escapeAttribute(help.slice(0, limits.choice))}"`;
  const open = `<${name}${type} allowBlank="1" showInputMessage="1" showErrorMessage="0"${prompt} sqref="${areaName(area)}"`;
  return words.length > 0
    ? `${open}><${formula}>"${escapeText(list)}"</${formula}></${name}>`
    : `${open}/>`;
}

export function offered(
  sheet: string,
  text: string,
  frame: Node,
  choices: readonly Choice[],
): Placed[] {
  if (choices.length === 0) return [];
  const list = childOf(frame, "dataValidations");
  refuseOverlap(sheet, list, choices);
  const added = choices.map((choice) => choiceXml(sheet, frame.prefix, choice)).join("");
  const total = childrenOf(list, "dataValidation").length + choices.length;
  if (list) return growing(text, list, total, added).map(within);
  const made = listXml(frame.prefix, "dataValidations", total, added);
  return [intoSheet(frame, "dataValidations", made)];
}
