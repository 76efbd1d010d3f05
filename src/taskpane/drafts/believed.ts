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
