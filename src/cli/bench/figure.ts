/** One measured figure, with the budget it is held against. */
export interface Figure {
  readonly what: string;
  /** As measured, in words: "1.02 x mathjs". */
  readonly measured: string;
  /** In words; "" where there is none. */
  readonly budget: string;
  /** Undefined where there is no budget. */
  readonly isWithin?: boolean;
}

/** A ratio or a figure held against the most it may be. */
export const held = (
  what: string,
  value: number,
  most: number,
  unit: string,
  digits = 2,
): Figure => ({
  what,
  measured: `${value.toFixed(digits)} ${unit}`,
  budget: `at most ${String(most)} ${unit}`,
  isWithin: value <= most,
});

/** Only told. */
export const told = (what: string, value: number, unit: string, digits = 2): Figure => ({
  what,
  measured: `${value.toFixed(digits)} ${unit}`,
  budget: "",
});
