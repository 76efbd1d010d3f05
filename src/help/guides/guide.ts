/**
 * A help page as data: no HTML in it. Texts may hold `code`, **strong words** and [links](page.html).
 * Figures are worked, so that the tests can run the formula and do the arithmetic beside it.
 */
import type { Work } from "../../core/batch/cautions";

export interface Worked {
  /** As typed into a cell. */
  readonly formula: string;
  /** What the cell shows, to the digits given; or how its sentence begins. */
  readonly shows: string;
  readonly unit: string;
  /** The same on paper: 56.1 × 0.1 × 2.3 ÷ 10. */
  readonly byHand: string;
}

export interface Mistake {
  readonly title: string;
  readonly wrong: string;
  readonly right: string;
  /** What each comes to; the wrong one may be arithmetic alone, or a refusal. */
  readonly wrongFigure: Figure;
  readonly rightFigure: Figure;
  readonly costs: string;
}

export interface Figure {
  /** Undefined where the wrong way is no function of ours. */
  readonly formula?: string;
  readonly shows: string;
  readonly unit: string;
  /** Undefined where the cell refuses: `shows` is then how its sentence begins. */
  readonly byHand?: string;
}

export type Part =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "steps"; readonly items: readonly string[] }
  | { readonly kind: "points"; readonly items: readonly string[] }
  | { readonly kind: "worked"; readonly rows: readonly Worked[] }
  | { readonly kind: "block"; readonly lines: readonly string[] }
  | {
      readonly kind: "table";
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: "picture"; readonly file: string; readonly says: string }
  | { readonly kind: "mistakes"; readonly mistakes: readonly Mistake[] }
  /** Word, also called, meaning: each can be found and linked to. */
  | { readonly kind: "words"; readonly words: readonly (readonly [string, string, string])[] }
  /** Those of one work, or all. */
  | { readonly kind: "cautions"; readonly work?: Work };

export interface Guide {
  /** Its file in the help folder. */
  readonly file: string;
  readonly title: string;
  /** What the reader will know afterwards, in one sentence. */
  readonly lead: string;
  readonly parts: readonly Part[];
}

export const heading = (text: string): Part => ({ kind: "heading", text });
export const text = (said: string): Part => ({ kind: "text", text: said });
export const steps = (...items: string[]): Part => ({ kind: "steps", items });
export const points = (...items: string[]): Part => ({ kind: "points", items });
export const worked = (...rows: Worked[]): Part => ({ kind: "worked", rows });
export const block = (...lines: string[]): Part => ({ kind: "block", lines });
export const table = (head: string[], ...rows: string[][]): Part => ({ kind: "table", head, rows });
export const picture = (file: string, says: string): Part => ({ kind: "picture", file, says });
export const cautionList: Part = { kind: "cautions" };
export const cautionsOf = (work: Work): Part => ({ kind: "cautions", work });
