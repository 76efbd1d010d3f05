/** A row that was checked: each figure with its verdict, and what is to be said. */
import type { Verdict } from "./check-figure";
import type { Finding } from "../reporting/finding";
import type { FormulaFacts } from "../reading/formula-facts";
import type { HeldFigure } from "../reading/held-figure";
import type { Readings } from "../reading/readings";

export interface CheckedFigure {
  readonly figure: HeldFigure;
  readonly facts: FormulaFacts | undefined;
  readonly verdict: Verdict;
}

export interface CheckedRow {
  readonly readings: Readings;
  /** As the titration's own figures read them. */
  readonly titration: Readings;
  readonly figures: readonly CheckedFigure[];
  readonly findings: readonly Finding[];
  /** What its titration comes to with each answer to what nobody said; empty where no question is open. */
  readonly acidValues?: readonly number[];
}
