/**
 * Where Enter and the next step bring the hand: to the next field that still wants something. Fields say
 * so themselves, by `data-wanted`, so that no list of them stands anywhere else.
 */
import { isShown } from "../widgets/kept-focus";

/** @param after a place in the part; left out: from its top */
export function wantedField(part: Element, after?: Element | null): HTMLElement | undefined {
  return [...part.querySelectorAll<HTMLElement>("[data-wanted]")].find(
    (field) =>
      isShown(field) &&
      !field.matches(":disabled") &&
      field !== after &&
      (!after || after.compareDocumentPosition(field) & Node.DOCUMENT_POSITION_FOLLOWING),
  );
}
