/** What a re-check says about one cell. Plain values: the report in the pane and on a sheet are drawn from them. */
import type { RoleId } from "../../recognising/roles";
import type { Effect } from "./effect";
import type { MistakeId } from "../mistakes/all";

/** Worked out and as it should be; worked out and not; held, and not worked out; not held. */
export type DoseState = "agrees" | "differs" | "unchecked" | "none";

export interface Finding {
  readonly sheet: string;
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
  /** E12 */
  readonly address: string;
  readonly heading: string;
  readonly role: RoleId;
  /** The lot or batch of the row. */
  readonly label: string;
  readonly mistake: MistakeId;
  /** Another that acts together with it on this one figure. */
  readonly also?: MistakeId;
  /** Other causes, each one mistake or two, that give the figure to its digits as well: none is sure. */
  readonly orElse?: readonly (readonly MistakeId[])[] | undefined;
  /** The base whose figure was taken, and the base that is weighed out. */
  readonly bases?: { readonly counted: string; readonly weighed: string };
  /** What is known of the dose that the row holds. */
  readonly dose: DoseState;
  /** Where the mistake was made when it is not in this row: the row of the lot's titration, from 1. */
  readonly fromRow?: number;
  /** In the unit of the column. */
  readonly held: string;
  readonly should: string;
  readonly unit: string;
  /** The formula that shows the mistake; "" when the figures alone do. */
  readonly formula: string;
  readonly effect: Effect | undefined;
  /** The dose that the effect was read from, and what the mistake does by itself: told where it is none. */
  readonly byDose?: { readonly role: RoleId; readonly worked: Effect | undefined };
  /** A reading of the row that may be the slip instead, in a sentence: no effect is told then. */
  readonly oddInput?: string;
}

/** A formula that gives the right figures so far and will not always: found by reading it. */
export interface Latent {
  readonly sheet: string;
  readonly column: number;
  readonly heading: string;
  readonly mistake: MistakeId;
  readonly formula: string;
  /** The first such cell. */
  readonly address: string;
  readonly rows: number;
}

/** Rows, or one figure in each, that could not be checked. */
export interface Unchecked {
  readonly sheet: string;
  /** Goes on from "not checked: ". */
  readonly why: string;
  /** Counted from 0. */
  readonly rows: readonly number[];
  /** Lots stand across: what is counted are columns. */
  readonly isAcross?: true;
  /** Almost no row of a column of doses fits: said in a sentence of its own, and which answer may be why. */
  readonly doubt?: string;
}

/** Rows with a dose whose acid, or whose water, is too much for a plain base batch. */
export interface AboveLimit {
  readonly sheet: string;
  /** Counted from 0. */
  readonly rows: readonly number[];
  /** Lots stand across: what is counted are columns. */
  readonly isAcross?: true;
  /** % FFA as oleic, worked out from the readings; or % of water, as it is written. */
  readonly of: "acid" | "water";
  readonly least: number;
  readonly most: number;
}

export type MethanolKind = "little" | "much" | "column";

/** Rows whose methanol is too little to be all, or far too much; in most rows it is the column. */
export interface OddMethanol {
  readonly kind: MethanolKind;
  readonly rows: readonly number[];
  /** Moles of methanol for each of triglyceride. */
  readonly ratios: readonly number[];
}

export interface MethanolSeen {
  readonly sheet: string;
  /** Of the rows that were looked at; the odd ones are among them. */
  readonly ratios: readonly number[];
  readonly odd: readonly OddMethanol[];
  readonly isAcross?: true;
}

/** What a checked figure is, in the words of the summary. */
export type Kind =
  | "titre"
  | "acid value"
  | "% FFA"
  | "mass of oil"
  | "lye for the acid"
  | "lye for the reaction"
  | "dose";

export interface RecheckReport {
  /** Rows that held anything to check. */
  readonly rows: number;
  /** Figures compared, in all and by kind. */
  readonly figures: number;
  readonly checked: Readonly<Record<Kind, number>>;
  readonly findings: readonly Finding[];
  readonly latent: readonly Latent[];
  readonly unchecked: readonly Unchecked[];
  /** Rows with a dose whose acid is above the limit of a plain base batch, right or wrong. */
  readonly aboveLimit: readonly AboveLimit[];
  /** Methanol against its oil, by table. */
  readonly methanol: readonly MethanolSeen[];
  /** Why no dose was checked, where none was; "" otherwise. */
  readonly noDose: string;
  /** What nobody said and was taken for the working. */
  readonly taken: readonly string[];
  /** Figures at which the search for two mistakes at once ended with its budget. */
  readonly cutShort: number;
  /** All lots stand across: what is counted as rows are lots. */
  readonly isAcross?: true;
}
