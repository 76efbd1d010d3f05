/** A chart as lines, bars, marks and words in their places: all a component has to draw. Pixels. */

export interface Words {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
  readonly isBold?: boolean;
  /** Degrees. */
  readonly turned?: number;
}

export interface Stroke {
  readonly path: string;
  readonly is: "grid" | "axis";
}

export interface DrawnSeries {
  readonly colour: string;
  /** Paths; "" where there is none. */
  readonly line: string;
  readonly marks: string;
  readonly bars: string;
  readonly width: number;
  /** As SVG writes it: "4 2"; undefined for a line without gaps. */
  readonly dash: string | undefined;
}

/** Beside a name of the legend. */
export interface Sample extends DrawnSeries {
  readonly name: Words;
}

export interface Room {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Words[];
  readonly strokes: readonly Stroke[];
  /** What of the series lies outside is not drawn. */
  readonly plot: Room;
  readonly series: readonly DrawnSeries[];
  readonly legend: readonly Sample[];
}

/** Far outside the picture, where nothing is seen: a figure may lie anywhere. */
const far = 100_000;

export const place = (number: number): string =>
  String(Math.round(Math.min(far, Math.max(-far, number)) * 10) / 10);
