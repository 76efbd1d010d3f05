/** A figure together with how it is written in a formula: plain doubles, nothing of the program's own. */
export interface Worked {
  readonly value: number;
  readonly text: string;
  /** 0: stands alone; 1: a product; 2: a sum. */
  readonly level: 0 | 1 | 2;
}

export const number = (value: number): Worked => ({ value, text: String(value), level: 0 });
export const cell = (name: string, value: number): Worked => ({ value, text: name, level: 0 });

const within = (part: Worked, most: 0 | 1): string =>
  part.level > most ? `(${part.text})` : part.text;

export const times = (one: Worked, other: Worked): Worked => ({
  value: one.value * other.value,
  text: `${within(one, 1)}*${within(other, 1)}`,
  level: 1,
});
export const over = (one: Worked, other: Worked): Worked => ({
  value: one.value / other.value,
  text: `${within(one, 1)}/${within(other, 0)}`,
  level: 1,
});
export const plus = (one: Worked, other: Worked): Worked => ({
  value: one.value + other.value,
  text: `${one.text}+${other.text}`,
  level: 2,
});
export const minus = (one: Worked, other: Worked): Worked => ({
  value: one.value - other.value,
  text: `${one.text}-${within(other, 1)}`,
  level: 2,
});
export const average = (parts: readonly Worked[]): Worked => ({
  value: parts.reduce((sum, { value }) => sum + value, 0) / parts.length,
  text:
    parts.length === 1
      ? (parts[0]?.text ?? "")
      : `AVERAGE(${parts.map(({ text }) => text).join(",")})`,
  level: 0,
});
export const product = (first: Worked, ...rest: readonly Worked[]): Worked =>
  rest.reduce(times, first);
