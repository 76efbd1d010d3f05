/** A pick: one of a few words that a task asks for. Said once; its type, stored form and list follow from it. */
export interface PickFact<Word extends string = string> {
  /** Above its list; "" for an answer that is given by buttons of its own. */
  readonly label: string;
  /** A list that opens, or large buttons side by side. */
  readonly look: "list" | "buttons";
  /** In the order they are offered, each with what it is called. */
  readonly choices: readonly (readonly [Word, string])[];
  /** What holds until somebody picks; "" where nothing is taken for granted. */
  readonly first: Word;
  /** It stays from one draft to the next. */
  readonly isKept: boolean;
  /** The task goes no further without an answer. */
  readonly isNeeded?: boolean;
  /** Any other word is believed as well. */
  readonly isFree: boolean;
}

/** @example pick("buttons", "Weights in", { no: "g and kg", yes: "lb and oz as well" }, "no") */
export function pick<const Word extends string, const First extends string>(
  look: PickFact["look"],
  label: string,
  words: Readonly<Record<Word, string>>,
  first: First,
  more: { readonly isKept?: true; readonly isFree?: true; readonly isNeeded?: true } = {},
): PickFact<Word | First> {
  const choices = Object.entries(words) as [Word, string][];
  return {
    label,
    look,
    choices,
    first,
    isKept: more.isKept ?? false,
    isFree: more.isFree ?? false,
    isNeeded: more.isNeeded ?? false,
  };
}

export type Picks = Readonly<Record<string, PickFact>>;

/** What was picked, by pick. */
export type PickedOf<All extends Picks> = {
  readonly [Id in keyof All]: All[Id]["first"];
};

const of = <All extends Picks>(picks: All, word: (id: string, fact: PickFact) => string) =>
  Object.fromEntries(
    Object.entries(picks).map(([id, fact]) => [id, word(id, fact)]),
  ) as PickedOf<All>;

export const firstPicked = <All extends Picks>(picks: All): PickedOf<All> =>
  of(picks, (_, { first }) => first);

/** For the next draft: what is kept of this one, everything else as at first. */
export const keptPicked = <All extends Picks>(picks: All, before: PickedOf<All>): PickedOf<All> =>
  of(picks, (id, { first, isKept }) => (isKept ? before[id as keyof All] : first));

const isWordOf = ({ choices, first, isFree }: PickFact, word: string): boolean =>
  isFree || word === first || choices.some(([each]) => each === word);

/** Out of storage: what is no word of its pick is as at first. */
export const storedPicked = <All extends Picks>(
  picks: All,
  found: Readonly<Record<string, unknown>>,
): PickedOf<All> =>
  of(picks, (id, fact) => {
    const word = found[id];
    return typeof word === "string" && isWordOf(fact, word) ? word : fact.first;
  });
