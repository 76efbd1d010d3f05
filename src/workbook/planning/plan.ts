/**
 * What a change would do to the workbook, as values a person can read before it is done: which cells,
 * what is there now, what would be written. Nothing is written that is not in a plan.
 */
import type { Block, CellContent, Content, Step } from "../../sheet/port";
import type { Refusal as Refused } from "../../sheet/refusal";

/** One cell that would be written, or that holds something and stays. */
export interface PlannedCell {
  readonly block: Block;
  /** As a person writes it: Titrations!K12. */
  readonly address: string;
  /** The heading of its column, or what the cell is. */
  readonly heading: string;
  /** What is there now, as text; "" when the cell is empty. */
  readonly now: string;
  readonly content: Content;
  /** What would be there, as text: "2.90", "2026-05-04", a formula; "" when it would be emptied. */
  readonly shown: string;
  /** Something is there now that would be lost: written only when this address is confirmed. */
  readonly mustConfirm: boolean;
}

/** Something to know before it is written. */
export interface Remark {
  readonly sentence: string;
  /** Writing waits until this is confirmed: an address, or a key of its own. */
  readonly confirm?: string;
  /** What one agrees to by that, where the key is no address. */
  readonly agreeing?: string;
  /** The other answer, and what is left out by it: what stands there stays. */
  readonly keeping?: { readonly words: string; readonly id: string };
}

export interface Plan {
  readonly kind: "plan";
  /** What it writes, as in "record the titration again". */
  readonly what: string;
  /** Where, as in "row 12 of the sheet Titrations". */
  readonly where: string;
  /** In one sentence: where it goes, and what is made for it. */
  readonly summary: string;
  /** The cells that get something, and those that hold something. */
  readonly cells: readonly PlannedCell[];
  /** What else is made, in words, when there is no table yet. Empty otherwise. */
  readonly makes: readonly string[];
  readonly remarks: readonly Remark[];
  /** What must be confirmed before it is written; empty when nothing stands in the way. */
  readonly mustConfirm: readonly string[];
  /** What the change is about: a record's row, all columns of the table. */
  readonly block: Block;
  /** The block that is read back, where cells beside `block` are written too. */
  readonly covers?: Block;
  /** The table the cells belong to, since a formula there may be spelled two ways; "" for none. */
  readonly table: string;
  /** For the host: one undo step. */
  readonly steps: readonly Step[];
  /** Two plans with the same one would do the same to the same workbook. */
  readonly fingerprint: string;
}

/** Nothing can be planned, or nothing was done. */
export interface Refusal extends Refused {
  /** The row is occupied, and there is a free one: plan again for "next free". */
  readonly hasNextFree?: boolean;
  /** The host stopped half-way: some cells may be written. */
  readonly isHalfDone?: boolean;
}

/** What a person has seen and agreed to. */
export interface Confirmed {
  /** Of the plan that was shown. */
  readonly fingerprint: string;
  /** Out of that plan's `mustConfirm`. */
  readonly agreed: readonly string[];
}

/** A cell that was read back and is not as it was written. */
export interface Difference {
  readonly address: string;
  readonly heading: string;
  readonly sentence: string;
}

export type RecordOutcome =
  /** In the workbook, and read back. */
  | {
      readonly kind: "recorded";
      readonly plan: Plan;
      /** The row could be read again after writing. */
      readonly isReadBack: boolean;
      /** Empty when every cell holds what was written. */
      readonly differences: readonly Difference[];
      /** One undo takes all of it back. */
      readonly isOneUndo: boolean;
      /** What was left out that no figure needs, in sentences. */
      readonly asides: readonly string[];
      /** What keeps a result of the row from being worked out, in sentences. Empty when all are. */
      readonly troubles: readonly string[];
      /** What the calculated cells show, by heading. */
      readonly results: Readonly<Record<string, CellContent>>;
      readonly sentence: string;
    }
  /** Nothing was written: this plan has not been agreed to, or the workbook has changed since. */
  | { readonly kind: "to-confirm"; readonly plan: Plan; readonly sentence: string }
  | Refusal
  /** The host did not say whether it wrote, and the row cannot be read. */
  | { readonly kind: "not-known"; readonly plan: Plan; readonly sentence: string };
