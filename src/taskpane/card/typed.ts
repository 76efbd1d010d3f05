/**
 * What was typed of an amount, in whichever unit it was typed: with other units picked it is shown in those,
 * and goes to the row as it was typed.
 */
import { type Counted, type Form, typedForms } from "../../core/card/units";
import { placesFor } from "../../core/card/shown";
import type { Exact } from "../../core/exact/exact";
import { judge, type Judged, type NumberFieldFact } from "../widgets/judged";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import type { Held } from "./draft";

export interface Box {
  readonly counted: Counted;
  readonly form: Form;
  /** Under which a figure in a unit is kept. */
  readonly key: (form: Form) => string;
  readonly fact: NumberFieldFact;
}

export interface TypedBox {
  /** As it stands in the box. */
  readonly text: string;
  readonly judged: Judged;
  /** As the amount is counted: litres, kilograms, grams. */
  readonly value: Exact | undefined;
}

export function typedIn({ typed }: Held, box: Box, mark: DecimalMark): TypedBox {
  const { counted, form, key, fact } = box;
  const own = typed[key(form)] ?? "";
  const valueOf = (judged: Judged, of: Form): Exact | undefined =>
    judged.kind === "figure" ? judged.value.times(of.per) : undefined;
  const judged = judge(own, fact, mark);
  if (own !== "") return { text: own, judged, value: valueOf(judged, form) };
  for (const other of typedForms(counted)) {
    const text = typed[key(other)] ?? "";
    if (text === "") continue;
    const found = judge(text, { ...fact, unit: other.unit }, mark);
    const value = valueOf(found, other);
    // what is wrong is wrong in any unit: it stays to be put right
    if (value === undefined) return { text, judged: found, value };
    const here = value.div(form.per);
    const shown = withMark(here.toFixed(placesFor(here)), mark);
    return { text: shown, judged: judge(shown, fact, mark), value };
  }
  return { text: "", judged, value: undefined };
}

/** The keys of the same figure in other units: what is typed anew takes their place. */
export const othersOf = ({ counted, form, key }: Box): readonly string[] =>
  typedForms(counted)
    .map(key)
    .filter((each) => each !== key(form));
