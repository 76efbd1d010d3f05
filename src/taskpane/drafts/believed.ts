/**
 * Parts of a draft out of storage. It may have been written by an older version, by a crash, or by hand,
 * so it is believed only part by part: what is not of the right kind is left out.
 */
export type Unknown = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Empty for anything that is no object. */
export const objectOf = (value: unknown): Unknown => (isObject(value) ? value : {});

export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

export const textOf = (value: unknown): string => (typeof value === "string" ? value : "");

/** The words each pick may be; "any" where words are free. */
export type PickWords<Picked> = {
  readonly [Key in keyof Picked]: readonly Picked[Key][] | "any";
};

/** What was picked, as far as it is one of the words; else as usual. */
export function pickedFrom<Picked extends object>(
  value: unknown,
  usual: Picked,
  words: PickWords<Picked>,
): Picked {
  const found = objectOf(value);
  const good = Object.entries<readonly unknown[] | "any">(words).filter(([key, allowed]) => {
    const word = found[key];
    return typeof word === "string" && (allowed === "any" || allowed.includes(word));
  });
  return { ...usual, ...Object.fromEntries(good.map(([key]) => [key, found[key]])) };
}

/** What was typed into each field; an empty one is left out. */
export function typedFrom<Field extends string>(
  value: unknown,
  fields: readonly Field[],
): Readonly<Partial<Record<Field, string>>> {
  const found = objectOf(value);
  const typed = fields.map((field) => [field, textOf(found[field])] as const);
  return Object.fromEntries(typed.filter(([, text]) => text !== "")) as Partial<
    Record<Field, string>
  >;
}
