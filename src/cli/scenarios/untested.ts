/** What the README calls untested in Excel, word for word, and what would prove it. */
import type { LineId } from "../../workbook/checking/lines";

export interface Untested {
  readonly words: string;
  /** Lines of "Check this Excel"; all of them green. Empty where it takes a person. */
  readonly lines: readonly LineId[];
  /** The steps of tests/scenarios.md. */
  readonly steps: readonly string[];
}

export const untested: readonly Untested[] = [
  { words: "loading on Windows, the Mac and the web", lines: ["loaded", "offers"], steps: ["1.1"] },
  { words: "the list after `=TITRE.`", lines: [], steps: ["1.3"] },
  { words: "messages", lines: [], steps: ["2.3", "2.4"] },
  { words: "spills", lines: ["spills"], steps: ["2.5"] },
  { words: "speed", lines: ["speed"], steps: ["2.8"] },
  { words: "recording", lines: ["recording", "following"], steps: ["3.4", "3.6"] },
  { words: "one undo for all of it", lines: ["undo"], steps: ["3.5"] },
  { words: "charts", lines: ["charts"], steps: ["3.12"] },
  { words: "protected sheets", lines: ["protected"], steps: ["3.8"] },
  { words: "two people in one workbook", lines: [], steps: ["4.7"] },
  { words: "healing of `#NAME?`", lines: ["healing"], steps: ["4.3", "4.4"] },
  { words: "the pane's content security policy", lines: ["policy"], steps: ["5.2"] },
  { words: "a screen reader inside it", lines: [], steps: ["3.10"] },
];
