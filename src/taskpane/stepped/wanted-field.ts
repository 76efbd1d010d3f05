/**
 * Where Enter and the next step bring the hand: to the next field that still wants something. Fields say
 * so themselves, by `data-wanted`, so that no list of them stands anywhere else. Enter passes over nothing
 * that is open: a question (`data-asked`), or an empty field that the row cannot do without (`required`).
 */
import { isShown } from "../widgets/kept-focus";

const open = "[data-asked], input:required:invalid";

const canTake = (field: HTMLElement): boolean => isShown(field) && !field.matches(":disabled");

const follows = (field: Element, after: Element): boolean =>
  (after.compareDocumentPosition(field) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;

const allIn = (part: Element, what: string): HTMLElement[] =>
  [...part.querySelectorAll<HTMLElement>(what)].filter(canTake);

/** @param after a place in the part; left out: from its top */
export function wantedField(part: Element, after?: Element | null): HTMLElement | undefined {
  return allIn(part, "[data-wanted]").find(
    (field) => field !== after && (!after || follows(field, after)),
  );
}

/** What Enter comes to before it goes on: what is open here or above, then what wants something below. */
export function nextOf(part: Element, here: Element): HTMLElement | undefined {
  return (
    allIn(part, open).find((field) => !follows(field, here)) ??
    allIn(part, `[data-wanted], ${open}`).find((field) => follows(field, here))
  );
}

/** A question without an answer, or an empty field that must be filled in, anywhere in the part. */
export const openIn = (part: Element): HTMLElement | undefined => allIn(part, open)[0];

/** A question that no step on is to be taken over: `data-asked="first"`. */
export const firstAsked = (part: Element): HTMLElement | undefined =>
  allIn(part, "[data-asked=first]")[0];

/**
 * The hand comes to it, and a field that must be filled in says so. Of a question it comes to the answer
 * that does no harm; where there is none it stays at the question, so that one more press answers nothing.
 */
export function askFor(field: HTMLElement): void {
  const into = field.querySelector<HTMLElement>("[data-harmless], select");
  (into ?? field).focus();
  if (field instanceof HTMLInputElement) field.checkValidity();
}
