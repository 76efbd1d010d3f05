/** A chart to be added to a sheet: lines through points, each with what its cells now hold. */
import type { Area } from "../../sheet/area";

export interface Chart {
  readonly title: string;
  /** What the picture shows, for those who cannot see it. */
  readonly description: string;
  readonly acrossTitle: string;
  readonly upTitle: string;
  /** Number format of the figures across; "General" when not given. */
  readonly acrossFormat?: string;
  /** The cells it lies over. */
  readonly over: Area;
  readonly series: readonly Series[];
}

export interface Series {
  readonly name: ChartCells & { readonly text: string };
  readonly across: ChartFigures;
  readonly up: ChartFigures;
}

export interface ChartCells {
  readonly sheet: string;
  readonly area: Area;
}

/** Programs draw from these figures until they read the cells; undefined where there is none. */
export interface ChartFigures extends ChartCells {
  readonly figures: readonly (number | undefined)[];
}
