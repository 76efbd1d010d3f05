/**
 * What was typed of an amount, in whichever unit it was typed: with other units picked it is shown in those,
 * and goes to the row as it was typed.
 */
import { type Form, typedForms } from "../../core/card/units";
import { placesFor } from "../../core/card/shown";
import type { Exact } from "../../core/exact/exact";
import type { Judged } from "../widgets/judged";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { judgeIn } from "./as-weighed";
import type { Box } from "./box";
import type { Held } from "./draft";

export interface TypedBox {
  /** As it stands in the box. */
  readonly text: string;
  readonly judged: Judged;
  /** As the amount is counted: litres, kilograms, grams. */
  readonly value: Exact | undefined;
  /** The unit it was typed in, and how it stood there: "99 g", "2 lb 10 oz". */
  readonly form: Form;
  readonly asTyped: string;
}

/** As it was typed, whatever units are picked now: a figure with its unit. */
const asTyped = (text: string, judged: Judged, { unit }: Form): string =>
  judged.kind !== "figure" || /[a-z]/i.test(text)
    ? text.trim()
    : `${judged.value.toString()} ${unit}`;

export function typedIn({ typed }: Held, box: Box, mark: DecimalMark): TypedBox {
  const { counted, form, key } = box;
  const own = typed[key(form)] ?? "";
  const valueOf = (judged: Judged, of: Form): Exact | undefined =>
    judged.kind === "figure" ? judged.value.times(of.per) : undefined;
  const judged = judgeIn(own, box, form, mark);
  if (own !== "")
    return {
      text: own,
      judged,
      value: valueOf(judged, form),
      form,
      asTyped: asTyped(own, judged, form),
    };
  for (const other of typedForms(counted)) {
    const text = typed[key(other)] ?? "";
    if (text === "") continue;
    const found = judgeIn(text, box, other, mark);
    const value = valueOf(found, other);
    // what is wrong is wrong in any unit: it stays to be put right
    const then = { form: other, asTyped: asTyped(text, found, other) };
    if (value === undefined) return { text, judged: found, value, ...then };
    const here = value.div(form.per);
    const shown = withMark(here.toFixed(placesFor(here)), mark);
    return { text: shown, judged: judgeIn(shown, box, form, mark), value, ...then };
  }
  return { text: "", judged, value: undefined, form, asTyped: "" };
}

/** The keys of the same figure in other units: what is typed anew takes their place. */
export const othersOf = ({ counted, form, key }: Box): readonly string[] =>
  typedForms(counted)
    .map(key)
    .filter((each) => each !== key(form));
