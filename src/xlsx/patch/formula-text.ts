/** The formula of a cell exchanged or taken out; its value stays, letter for letter. */
import { areaName } from "../../sheet/cell-name";
import type { Replacement } from "../../sheet/formula/splice";
import type { Area } from "../../sheet/area";
import type { RawCell } from "../read/sheet-scan";
import { escapeText } from "../xml/escape";
import { prefixed, withAttribute } from "../xml/tag";

export interface NewFormula {
  /** As files hold it, no equals sign. */
  readonly text: string;
  /** It is an array formula over this area. */
  readonly array?: Area | undefined;
}

/** The mark of a formula that spills by itself goes with it. */
function unmarked(sheet: string, raw: RawCell): Replacement[] {
  if (raw.tag.attributes.cm === undefined) return [];
  const { start, openEnd: end } = raw.tag;
  return [{ start, end, text: withAttribute(sheet.slice(start, end), "cm", undefined) }];
}

/** `sheet` is the text of the sheet's part; without a new formula the old one goes. */
export function withFormula(
  sheet: string,
  raw: RawCell,
  formula: NewFormula | undefined,
): Replacement[] {
  if (!raw.formula) return [];
  const { tag, end } = raw.formula;
  const name = prefixed(tag.prefix, "f");
  const array = formula?.array ? ` t="array" ref="${areaName(formula.array)}"` : "";
  const text = formula ? `<${name}${array}>${escapeText(formula.text)}</${name}>` : "";
  return [...unmarked(sheet, raw), { start: tag.start, end, text }];
}
