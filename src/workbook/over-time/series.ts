/** Figures in the order of time, with what they are held against, and what that comes to in a sentence. */

export interface Point {
  /** As a spreadsheet counts days. */
  readonly day: number;
  readonly value: number;
  /** The lot, the bottle, or the batch. */
  readonly of: string;
  /** "in control", or what is odd about it. */
  readonly said: string;
  readonly isOut: boolean;
}

/** A limit, a centre, a line: a figure beside each point. */
export interface Line {
  readonly name: string;
  readonly values: readonly number[];
}

/** Another figure of the same rows, which the points may be drawn against. */
export interface Against {
  readonly what: string;
  readonly unit: string;
  /** One for each point; undefined where its row has none. */
  readonly values: readonly (number | undefined)[];
  readonly places: number;
}

interface Shown {
  readonly title: string;
  /** "mL", "mol/L", "mg KOH/g". */
  readonly unit: string;
  /** What the points are. */
  readonly what: string;
  /** In plain words first. */
  readonly sentence: string;
  /** Rows that are not among the points, in a sentence each. */
  readonly leftOut: readonly string[];
}

export interface Series extends Shown {
  readonly kind: "series";
  /** What the points follow one another by. */
  readonly across: "days" | "batches";
  /** What each point is of: the heading over their names. */
  readonly called: "Lot" | "Bottle" | "Batch";
  /** Something to mind. */
  readonly isOdd: boolean;
  readonly points: readonly Point[];
  readonly lines: readonly Line[];
  readonly against?: Against;
  /** Where its limits come from. */
  readonly source: string;
  /** The function that says the same of cells: CONTROL, STRENGTHON, none. */
  readonly summary: "control" | "strength" | "none";
  /** Decimals its figures are shown to. */
  readonly places: number;
}

export interface TooFew extends Shown {
  readonly kind: "too few";
}

export type Found = Series | TooFew;

/** Over what is said of each point. */
export const judgementHeading = "Judgement";

/** Is, or are. */
export const are = (count: number): string => (count === 1 ? "is" : "are");
