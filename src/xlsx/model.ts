/**
 * An opened workbook as plain values: what a grid can show, and a list of what it cannot, which stays
 * in the file all the same.
 */
import type { Area, Place } from "../sheet/area";
import type { Filter } from "./filter";
import type { Package } from "./package/package";

export type CellValue = string | number | boolean | { readonly error: string };

export interface Cell extends Place {
  /** Typed, or the cached result of the formula; undefined when there is none. */
  readonly value: CellValue | undefined;
  /** With its equals sign, as a cell shows it: TITRE.DOSE(...), no _xlfn. */
  readonly formula?: string;
  /** Index into the workbook's looks. */
  readonly look: number;
  /** The formula answers over this area, itself its first cell. */
  readonly array?: Area & { readonly isDynamic: boolean };
  /** The cell whose array formula answers here. */
  readonly spilledFrom?: Place;
  /** Part of a what-if table, which its program works out: the value is the one it last came to. */
  readonly isWhatIf?: true;
}

/** How a cell looks. Colours as #rrggbb. */
export interface Look {
  /** A number format as the spreadsheet writes it; "General" where none was given. */
  readonly format: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underlined?: boolean;
  readonly struck?: boolean;
  /** In points. */
  readonly size?: number;
  readonly colour?: string;
  readonly fill?: string;
  readonly horizontal?: string;
  readonly vertical?: string;
  readonly wraps?: boolean;
  /** Room before a text, in letters. */
  readonly indent?: number;
  readonly borders?: Partial<Record<"left" | "right" | "top" | "bottom", Border>>;
  /** Open to change on a protected sheet. */
  readonly isUnlocked?: boolean;
}

export interface Border {
  /** thin, medium, dashed, double ... */
  readonly line: string;
  readonly colour?: string;
}

export interface TableColumn {
  readonly heading: string;
  /** With its equals sign. */
  readonly formula?: string;
}

export interface Table {
  readonly name: string;
  /** Headings and totals included. */
  readonly area: Area;
  readonly hasHeadings: boolean;
  readonly hasTotals: boolean;
  readonly columns: readonly TableColumn[];
  readonly filter?: Filter;
  /** Its rows come from an outside source. */
  readonly isFed: boolean;
  /** The part that holds it. */
  readonly part: string;
}

export interface ColumnWidth {
  readonly first: number;
  readonly last: number;
  /** In characters. */
  readonly width?: number;
  readonly isHidden: boolean;
  readonly look: number;
}

/** Something the grid does not show and the file keeps. */
export interface Kept {
  readonly what: KeptKind;
  /** Undefined: of the workbook as a whole. */
  readonly sheet?: string;
  readonly count: number;
}

export type KeptKind =
  | "charts"
  | "images"
  | "drawings"
  | "conditional formats"
  | "validations"
  | "notes"
  | "threaded comments"
  | "hyperlinks"
  | "sparklines"
  | "slicers"
  | "timelines"
  | "pivot tables"
  | "embedded objects"
  | "form controls"
  | "outside data"
  | "links to other workbooks"
  | "macros"
  | "data model"
  | "custom XML"
  | "web extensions"
  | "digital signatures"
  | "rich text";

export interface RowHeight {
  readonly row: number;
  /** In points. */
  readonly height: number;
  /** Somebody set it; otherwise its program made it as high as what stands in it. */
  readonly isSet: boolean;
}

export interface Sheet {
  readonly name: string;
  readonly state: "visible" | "hidden" | "very hidden";
  /** A sheet that is a chart, a dialogue or a macro has no cells. */
  readonly kind: "cells" | "other";
  /** Row by row, from left to right; only cells that hold something or have a look. */
  readonly cells: readonly Cell[];
  readonly widths: readonly ColumnWidth[];
  readonly hiddenRows: readonly number[];
  /** Of rows whose height the file says. */
  readonly heights: readonly RowHeight[];
  readonly merged: readonly Area[];
  readonly tables: readonly Table[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** The paper lies on its long side when it is printed; undefined where the file does not say. */
  readonly isLandscape?: boolean;
  readonly isProtected: boolean;
  readonly notes: readonly Note[];
  /** Cells that links, notes and threads of comments hang on. */
  readonly attached: readonly Area[];
  readonly validations: readonly Validation[];
  /** Of its cells outside tables. */
  readonly filter?: Filter;
  /** The part that holds it. */
  readonly part: string;
}

/** What may be typed into cells. Without words and without a reference: a rule that is no list. */
export interface Validation {
  readonly areas: readonly Area[];
  /** The list to choose from, written out ... */
  readonly words?: readonly string[];
  /** ... or where it stands, with its equals sign, as seen from the first cell of the first area. */
  readonly refersTo?: string;
  /** The program that made the file lets nothing else be typed. */
  readonly isStrict: boolean;
}

/** What was written beside a cell. */
export interface Note {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

export interface DefinedName {
  readonly name: string;
  /** With its equals sign. */
  readonly refersTo: string;
  /** Known on this sheet alone. */
  readonly sheet?: string;
  readonly isHidden: boolean;
}

export interface Workbook {
  readonly sheets: readonly Sheet[];
  readonly names: readonly DefinedName[];
  /** The day that dates count from. */
  readonly dates: 1900 | 1904;
  readonly looks: readonly Look[];
  readonly kept: readonly Kept[];
  /** Sheets can be neither added nor removed. */
  readonly isProtected: boolean;
  /** It asks whoever opens it to work all of it out: nobody vouches for the results in it. */
  readonly isUnsettled: boolean;
  /** The file as its parts; see patch.ts. */
  readonly file: Package;
}
