/** What is agreed of a logbook, as plain values: its columns, its figures for all rows, its answers. */
import type { TablePlace } from "./find-tables";
import type { RoleId } from "./roles";
import type { DateOrder } from "./typed-date";
import type { Commas } from "./typed-number";

/** Grams of lye: of the pure base, or of the lye as it comes out of its bag. */
export const bases = ["pure", "as weighed"] as const;
export type Basis = (typeof bases)[number];

/** One blank for the day; the last one written above; nothing to subtract; nobody knows. */
export const emptyBlanks = ["day", "above", "none", "unknown"] as const;
export type EmptyBlank = (typeof emptyBlanks)[number];

/** What a drop or a cup is measured in. */
export const sizeUnits = ["mL", "g", "L"] as const;
export type SizeUnit = (typeof sizeUnits)[number];

export type Answer =
  /** How many litres one of them is, as typed; the word "" stands for a row without one. */
  | { readonly ask: "unit"; readonly word: string; readonly litres: string }
  /** How much one drop or cup is, as typed, in a unit. */
  | { readonly ask: "size"; readonly word: string; readonly in: SizeUnit; readonly size: string }
  | { readonly ask: "blank"; readonly means: EmptyBlank }
  /** What the comma of "1,250" is; unsaid takes the answer away. */
  | { readonly ask: "commas"; readonly means: Commas }
  /** A word where a blank should stand: "none". */
  | { readonly ask: "word"; readonly word: string; readonly means: EmptyBlank };

export interface MappedColumn {
  readonly column: number;
  readonly heading: string;
  readonly role: RoleId;
  readonly unit: string | undefined;
  /** Of grams of lye, once it is known. */
  readonly basis?: Basis;
  /** Of a drop or a cup, once it is said: how many of the role's own unit one is (measured.ts). */
  readonly times?: number;
  /** How near its figures are to what was meant, as a part of them: of what was only weighed. */
  readonly within?: number;
}

/** A figure that holds for all rows: in a cell of the sheet, or typed in the pane. */
export interface MappedConstant {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly basis?: Basis;
  readonly times?: number;
  readonly from:
    | {
        readonly kind: "cell";
        readonly row: number;
        readonly column: number;
        readonly label: string;
      }
    | { readonly kind: "typed"; readonly value: string };
}

export interface LogbookMapping {
  readonly sheet: string;
  readonly place: TablePlace;
  readonly columns: readonly MappedColumn[];
  readonly constants: readonly MappedConstant[];
  /** As the book's own figures say. */
  readonly commas: Commas;
  /** What was answered about words that nobody can know: "drum". */
  readonly answers?: readonly Answer[];
  /** In which order it writes its days, once a person has said so. */
  readonly dates?: DateOrder;
  /** Rows that a person leaves out, counted from 0. */
  readonly left?: readonly number[];
}
