/**
 * The bench cards in hand: which batch's is shown, and of each what was ticked and what was weighed. The
 * amounts are not in it, since the workbook has them.
 */
import { type CardUnits, cardUnits } from "../../core/card/units";
import { isObject, listOf, objectOf, textOf } from "../drafts/believed";

export interface Held {
  /** Of steps that are done. */
  readonly ticks: readonly string[];
  /** As typed, by amount or by what was asked after the batch; what is left out is empty. */
  readonly typed: Readonly<Record<string, string>>;
}

export interface Draft {
  readonly version: 1;
  /** Whose card is shown; "" for the latest batch. */
  readonly batch: string;
  /** "" for those of the batch. */
  readonly units: CardUnits | "";
  /** By batch, the one held last at the end. */
  readonly cards: Readonly<Record<string, Held>>;
}

export type Action =
  | { readonly do: "open"; readonly batch: string }
  | { readonly do: "units"; readonly units: CardUnits | "" }
  | { readonly do: "tick"; readonly card: string; readonly step: string; readonly isDone: boolean }
  | {
      readonly do: "type";
      readonly card: string;
      readonly field: string;
      readonly text: string;
      /** The same in other units: it takes their place. */
      readonly insteadOf?: readonly string[];
    };

/** Cards of batches long done go. */
const mostCards = 12;

const nothingHeld: Held = { ticks: [], typed: {} };
const newDraft: Draft = { version: 1, batch: "", units: "", cards: {} };

export const heldOf = ({ cards }: Draft, card: string): Held => cards[card] ?? nothingHeld;

function holding(draft: Draft, card: string, held: Held): Draft {
  const others = Object.entries(draft.cards).filter(([each]) => each !== card);
  return {
    ...draft,
    cards: Object.fromEntries([...others, [card, held] as const].slice(-mostCards)),
  };
}

const without = (typed: Held["typed"], field: string): Held["typed"] =>
  Object.fromEntries(Object.entries(typed).filter(([each]) => each !== field));

export function reduce(draft: Draft, action: Action): Draft {
  switch (action.do) {
    case "open":
      return { ...draft, batch: action.batch };
    case "units":
      return { ...draft, units: action.units };
    case "tick": {
      const held = heldOf(draft, action.card);
      const others = held.ticks.filter((each) => each !== action.step);
      const ticks = action.isDone ? [...others, action.step] : others;
      return holding(draft, action.card, { ...held, ticks });
    }
    case "type": {
      const held = heldOf(draft, action.card);
      const rest = [action.field, ...(action.insteadOf ?? [])].reduce(without, held.typed);
      const typed = action.text === "" ? rest : { ...rest, [action.field]: action.text };
      return holding(draft, action.card, { ...held, typed });
    }
  }
}

const texts = (value: unknown): Record<string, string> =>
  Object.fromEntries(
    Object.entries(objectOf(value)).flatMap(([key, text]) =>
      textOf(text) === "" ? [] : [[key, textOf(text)]],
    ),
  );

const heldFrom = (value: unknown): Held => ({
  ticks: listOf(objectOf(value).ticks).flatMap((each) => textOf(each) || []),
  typed: texts(objectOf(value).typed),
});

export const draftFrom = (value: unknown): Draft =>
  isObject(value) && value.version === 1
    ? {
        version: 1,
        batch: textOf(value.batch),
        units: cardUnits.find((each) => each === value.units) ?? "",
        cards: Object.fromEntries(
          Object.entries(objectOf(value.cards)).map(([card, held]) => [card, heldFrom(held)]),
        ),
      }
    : newDraft;
