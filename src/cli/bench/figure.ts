/** One measured figure, with the budget it is held against. The smaller, the better, all of them. */
export interface Figure {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  /** Places after the point that are shown. */
  readonly digits: number;
  /** The budget; undefined where there is none. */
  readonly most?: number;
}

/** A ratio or a figure held against the most it may be. */
export const held = (
  what: string,
  value: number,
  most: number,
  unit: string,
  digits = 2,
): Figure => ({ what, value, unit, digits, most });

/** Only told. */
export const told = (what: string, value: number, unit: string, digits = 2): Figure => ({
  what,
  value,
  unit,
  digits,
});

/** A part of the bench, measured by itself: in a process of its own when two trees are compared. */
export interface Measure {
  readonly name: string;
  /** Does it measure what was built? */
  readonly isOfBuild?: boolean;
  /** @param build the folder of a build, for those of one */
  run(build: string): Promise<Figure[]>;
}

/** As measured, in words: "1.02 x mathjs". */
export const measured = ({ value, unit, digits }: Pick<Figure, "value" | "unit" | "digits">) =>
  `${value.toLocaleString("en-GB", { minimumFractionDigits: digits, maximumFractionDigits: digits })} ${unit}`;
