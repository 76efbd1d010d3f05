/** The lines of "Check this Excel": what each looks at, and the steps of tests/scenarios.md it stands for. */

export type LineId =
  | "loaded"
  | "offers"
  | "decimal-mark"
  | "every-function"
  | "cells"
  | "arrivals"
  | "spills"
  | "speed"
  | "recording"
  | "undo"
  | "following"
  | "protected"
  | "notes"
  | "lists"
  | "charts"
  | "healing"
  | "file"
  | "policy";

export interface CheckLine {
  readonly id: LineId;
  readonly name: string;
  readonly steps: readonly string[];
}

/** In the order in which they are looked at. */
export const checkLines: readonly CheckLine[] = [
  { id: "loaded", name: "The pane runs and reaches the workbook", steps: ["1.2"] },
  { id: "offers", name: "What the program offers", steps: [] },
  { id: "decimal-mark", name: "The decimal mark", steps: ["2.9"] },
  { id: "every-function", name: "Every function once", steps: ["2.1"] },
  { id: "cells", name: "What a cell may hold", steps: ["2.2", "2.6"] },
  { id: "arrivals", name: "How cells arrive at a function", steps: ["2.2"] },
  { id: "spills", name: "Answers over many cells", steps: ["2.5"] },
  { id: "speed", name: "1000 cells", steps: ["2.8"] },
  { id: "recording", name: "Recording a titration", steps: ["3.4"] },
  { id: "undo", name: "One undo", steps: ["3.5"] },
  { id: "following", name: "A row follows its titres", steps: ["3.6"] },
  { id: "protected", name: "A protected sheet", steps: ["3.8"] },
  { id: "notes", name: "Notes", steps: ["3.4"] },
  { id: "lists", name: "Lists to choose from", steps: ["3.4"] },
  { id: "charts", name: "Charts", steps: ["3.12"] },
  { id: "healing", name: "Mending #NAME?", steps: ["4.3", "4.4"] },
  { id: "file", name: "The file, and a partner copy", steps: ["4.6"] },
  { id: "policy", name: "What the pane's policy refused", steps: ["5.2"] },
];

/** Green: as it must be. Amber: not seen, or to be looked at. Red: not as it must be. */
export type Colour = "green" | "amber" | "red";

export interface Seen {
  readonly id: LineId;
  readonly colour: Colour;
  readonly words: string;
}

export const green = (id: LineId, words: string): Seen => ({ id, colour: "green", words });
export const amber = (id: LineId, words: string): Seen => ({ id, colour: "amber", words });
export const red = (id: LineId, words: string): Seen => ({ id, colour: "red", words });

/** A few of many, so that a sentence stays one. */
export const someOf = (names: readonly string[]): string =>
  names.length <= 3
    ? names.join(", ")
    : `${names.slice(0, 3).join(", ")} and ${String(names.length - 3)} more`;
