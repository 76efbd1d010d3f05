/** A chart of a file as plain values: where it lies, and enough to draw it. */

export interface FileChart {
  readonly sheet: string;
  /** What its program calls it: Chart 2. */
  readonly name: string;
  /** What it shows, as its maker put it for those who cannot see it. */
  readonly description?: string;
  readonly anchor: ChartAnchor;
  /** In words, in front of "chart": "line", "pie". */
  readonly kind: string;
  /** Undefined for a kind that is not drawn, or a chart that could not be read. */
  readonly picture?: ChartPicture;
}

/** A point in a cell, pixels from its upper left corner. */
export interface ChartCorner {
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
}

/** From one corner to the other, or of a size in pixels. */
export interface ChartAnchor {
  readonly from: ChartCorner;
  readonly to?: ChartCorner;
  readonly size?: { readonly width: number; readonly height: number };
}

export interface ChartPicture {
  readonly title?: ChartText;
  /** It has a title, which is the name of its only series. */
  readonly isNamedBySeries: boolean;
  readonly groups: readonly ChartGroup[];
  readonly axes: readonly ChartAxis[];
  readonly legend?: "b" | "t" | "l" | "r";
  /** What stands where there is no figure. */
  readonly blanks: "gap" | "zero" | "span";
  /** Rows and columns that are hidden are left out. */
  readonly leavesHidden: boolean;
}

/** Series drawn alike, on the same axes. */
export interface ChartGroup {
  readonly kind: "line" | "column" | "bar" | "scatter";
  readonly stacking: "none" | "stacked" | "full";
  /** Room between groups of columns, and how far columns lie over each other, in hundredths of one. */
  readonly gap: number;
  readonly overlap: number;
  /** By their numbers; undefined where the part names none. */
  readonly axes: readonly string[];
  readonly series: readonly ChartSeries[];
}

/** A text, and the cell it is taken from. */
export interface ChartText {
  readonly text: string;
  readonly refersTo?: string;
}

/** What cells hold, as the file last saw them: undefined where there is nothing, or an error. */
export interface ChartFigures {
  /** A reference as the file writes it, without an equals sign. */
  readonly refersTo?: string;
  readonly values: readonly (number | string | undefined)[];
  readonly format?: string;
}

export interface ChartSeries {
  /** From 0; colours go by it. */
  readonly place: number;
  readonly name?: ChartText;
  /** Categories, or figures across. */
  readonly across?: ChartFigures;
  readonly up: ChartFigures;
  readonly colour?: string;
  /** Joined by a line; of a scatter, only where it says so. */
  readonly isJoined: boolean;
  readonly dash?: string;
  /** Pixels. */
  readonly width?: number;
  /** circle, square ... or "none"; undefined: its program's own choice. */
  readonly mark?: string;
}

export interface ChartAxis {
  readonly number: string;
  readonly kind: "categories" | "dates" | "figures";
  readonly side: "b" | "t" | "l" | "r";
  readonly title?: ChartText;
  /** A number format; undefined: that of the cells. */
  readonly format?: string;
  readonly isHidden: boolean;
  readonly hasLines: boolean;
  readonly least?: number;
  readonly most?: number;
  readonly step?: number;
  /** Of a logarithmic scale. */
  readonly base?: number;
  readonly isReversed: boolean;
}
