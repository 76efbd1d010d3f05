/** What stands around a figure: its label, with the unit for a listener, and its unit, for the eye. */
import type { FieldProps } from "@fluentui/react-components";
import type { NumberFieldFact } from "./judged";
import { Together } from "./together";

/** @param wrong what is wrong with it, in a sentence; undefined when nothing is */
export const aroundFigure = (
  { label, unit, hint }: NumberFieldFact,
  wrong: string | undefined,
): Partial<FieldProps> => ({
  label: {
    children: (
      <>
        <Together>{label}</Together>
        {unit === "" ? null : <span className="unseen">, {unit}</span>}
      </>
    ),
  },
  ...(hint === undefined ? {} : { hint: <Together>{hint}</Together> }),
  ...(wrong === undefined ? {} : { validationMessage: <Together>{wrong}</Together> }),
  validationState: wrong === undefined ? "none" : "error",
});

export const Unit = ({ unit }: { unit: string }) => (
  <span className="unit" aria-hidden="true">
    {unit}
  </span>
);
