/** Arguments written into the formula itself are read when the twin is written, not by the twin. */

export interface Constant {
  readonly value: string | number | boolean;
}

const number = /^\(?([+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?)\)?$/i;

/** The value of a text that is a constant; undefined for a reference. */
export function constantOf(text: string): Constant | undefined {
  const [, figure] = number.exec(text) ?? [];
  if (figure !== undefined) return { value: Number(figure) };
  if (/^"([^"]|"")*"$/.test(text)) return { value: text.slice(1, -1).replaceAll('""', '"') };
  if (/^\(?(true|false)\)?$/i.test(text)) return { value: /true/i.test(text) };
  return undefined;
}
