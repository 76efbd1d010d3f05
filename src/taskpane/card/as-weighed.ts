/** What is typed as a scale or the card says it: "2 lb 6.4 oz", or a figure with its own unit behind it. */
import { computed, type Exact } from "../../core/exact/exact";
import { quoted } from "../../core/problem/quoted";
import { type Form, ouncesInPound, typedForms } from "../../core/card/units";
import { judge, type Judged } from "../widgets/judged";
import { type DecimalMark, readTyped, withMark } from "../widgets/typed-number";
import type { Box } from "./box";

const pounds = /^\s*([\d.,]+)\s*(?:lbs?|pounds?)\.?\s*(?:([\d.,]+)\s*(?:oz|ounces?)?\.?)?\s*$/i;
const ounces = /^\s*([\d.,]+)\s*(?:oz|ounces?)\.?\s*$/i;

const figureOf = (text: string, mark: DecimalMark): Exact | undefined => {
  const typed = readTyped(text, mark);
  return typed.kind === "number" ? typed.value : undefined;
};

/** Digits that a cell keeps less a few: sixteenths of a pound come out as they were typed. */
const digits = 12;

/** Without the unit that stands beside the box anyway. */
const withoutUnit = (text: string, unit: string): string => {
  const trimmed = text.trim();
  const ends = unit !== "" && trimmed.toLowerCase().endsWith(unit.toLowerCase());
  return ends && trimmed.length > unit.length ? trimmed.slice(0, -unit.length) : text;
};

/** @param form the unit that the figure counts in: the box's own, or another it was typed in */
export function judgeIn(
  text: string,
  { counted, fact }: Box,
  form: Form,
  mark: DecimalMark,
): Judged {
  const inForm = { ...fact, unit: form.unit };
  const ounce = typedForms(counted).find(({ unit }) => unit === "oz");
  const [, whole, over] = pounds.exec(text) ?? [];
  const [, only] = ounces.exec(text) ?? [];
  if (ounce === undefined || (whole ?? only) === undefined)
    return judge(withoutUnit(text, form.unit), inForm, mark);
  const [ofPounds, ofOunces] = [whole ?? "0", over ?? only ?? "0"].map((each) =>
    figureOf(each, mark),
  );
  if (ofPounds === undefined || ofOunces === undefined) return judge(text, inForm, mark);
  if (over !== undefined && ofOunces.gte(ouncesInPound))
    return {
      kind: "wrong",
      sentence: `${fact.label}: ${quoted(text)} has more ounces than a pound; behind the pounds type less than ${ouncesInPound.toString()}.`,
      mayBecomeRight: false,
    };
  const value = ofPounds.times(ouncesInPound).plus(ofOunces).times(ounce.per).div(form.per);
  return judge(
    withMark(computed(value.toSignificantDigits(digits).toNumber()).toFixed(), mark),
    inForm,
    mark,
  );
}
