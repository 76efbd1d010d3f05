/** A number box of the card: its figure may have been typed in other units before. */
import type { Counted, Form } from "../../core/card/units";
import type { NumberFieldFact } from "../widgets/judged";

export interface Box {
  readonly counted: Counted;
  readonly form: Form;
  /** Under which a figure in a unit is kept. */
  readonly key: (form: Form) => string;
  readonly fact: NumberFieldFact;
}
