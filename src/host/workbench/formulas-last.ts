/**
 * The engine keeps what it first makes of a formula's text: one that names a table which is not there
 * yet stays #NAME? for good. And a table takes its
 * columns' names when it is made. So sheets come first, then values, then tables, and formulas last.
 */
import type { Content, Step } from "../../sheet/port";

type SetCells = Extract<Step, { do: "set-cells" }>;

const keep: Content = { kind: "keep" };

const only = (step: SetCells, isWanted: (content: Content) => boolean): SetCells => ({
  ...step,
  contents: step.contents.map((row) => row.map((content) => (isWanted(content) ? content : keep))),
});

const isFormula = (content: Content): boolean => content.kind === "formula";

export function formulasLast(steps: readonly Step[]): Step[] {
  const sheets = steps.filter((step) => step.do === "add-sheet");
  const cells = steps.filter((step) => step.do === "set-cells");
  const others = steps.filter((step) => step.do !== "add-sheet" && step.do !== "set-cells");
  const withFormulas = cells.filter((step) => step.contents.flat().some(isFormula));
  return [
    ...sheets,
    ...cells.map((step) => only(step, (content) => !isFormula(content))),
    ...others,
    ...withFormulas.map((step) => only(step, isFormula)),
  ];
}
