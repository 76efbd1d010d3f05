/** What an act did, in a sentence. */
import { columnLetters } from "../../sheet/cell-name";
import { counted } from "../../sheet/counted";
import type { Step } from "./act-history";
import type { StillNamed } from "./still-named";
import type { StructuralAct } from "../../xlsx";

const from = (one: string, first: string, count: number, last: string): string =>
  count === 1 ? `${one} ${first}` : `${one}s ${first} to ${last}`;

/** @param sheets how many there are */
export function actWords(act: StructuralAct, sheets: number): string {
  switch (act.do) {
    case "insert-rows":
      return `${counted(act.count, "row")} inserted above row ${String(act.before + 1)} of ${act.sheet}.`;
    case "insert-columns":
      return `${counted(act.count, "column")} inserted before column ${columnLetters(act.before)} of ${act.sheet}.`;
    case "delete-rows": {
      const rows = from("Row", String(act.first + 1), act.count, String(act.first + act.count));
      return `${rows} of ${act.sheet} deleted.`;
    }
    case "delete-columns": {
      const last = columnLetters(act.first + act.count - 1);
      return `${from("Column", columnLetters(act.first), act.count, last)} of ${act.sheet} deleted.`;
    }
    case "rename-sheet":
      return `The sheet ${act.sheet} is now called ${act.name}.`;
    case "move-sheet":
      return `The sheet ${act.sheet} is now number ${String(act.to + 1)} of ${String(sheets)}.`;
    case "delete-sheet":
      return `The sheet ${act.sheet} was deleted.`;
  }
}

/** What was typed between two acts, in a sentence. @param cells in how many something was changed */
const typedWords = (cells: number): string =>
  cells === 0
    ? "what was changed beside the cells, as a width."
    : `what was typed or changed in ${counted(cells, "cell")}.`;

/** Said of a step that was gone over. */
export const stepWords = (where: "back" | "forth", step: Step): string =>
  `${where === "back" ? "Taken back" : "Done again"}: ${"act" in step ? step.says : typedWords(step.cells)}`;

/** Said before it is done. @param lost formulas that refer to what would go */
export const lostWords = (act: StructuralAct, lost: number): string => {
  const what =
    act.do === "delete-sheet"
      ? `the sheet ${act.sheet}`
      : act.do === "delete-rows"
        ? counted("count" in act ? act.count : 0, "row")
        : counted("count" in act ? act.count : 0, "column");
  const formulas =
    lost === 1
      ? "1 formula elsewhere that refers to it then shows #REF!"
      : `${counted(lost, "formula")} elsewhere that refer to it then show #REF!`;
  return `Delete ${what}? ${formulas}. Undo brings it all back.`;
};

/** How many are named one by one. */
const namedOneByOne = 3;

/** @example listed(["B-114", "B-115"]) // "B-114 and B-115" */
function listed(names: readonly string[]): string {
  const shown = names.slice(0, names.length > namedOneByOne + 1 ? namedOneByOne : undefined);
  const rest = names.length - shown.length;
  const last = rest > 0 ? `${String(rest)} more` : shown.pop();
  return shown.length > 0 ? `${shown.join(", ")} and ${String(last)}` : String(last);
}

/** What finds nothing any more, and what it was. */
function namedWords({ name, loses, by }: StillNamed): string {
  const rows = counted(by.length, `row of ${by[0]?.table ?? ""}`, `rows of ${by[0]?.table ?? ""}`);
  const are = by.length === 1 ? "is" : "are";
  const its = by.length === 1 ? "its" : "their";
  if (loses === "day") return `${rows} ${are} of batch ${name}: ${its} day will be gone.`;
  if (loses === "row of Batches")
    return `${rows} ${are} of batch ${name}: it will be in no row of Batches.`;
  const batches = [...new Set(by.map(({ batch }) => batch || "without a name"))];
  const use =
    batches.length === 1 ? `Batch ${listed(batches)} uses` : `Batches ${listed(batches)} use`;
  const theirs = batches.length === 1 ? "its" : "their";
  if (loses === "row of Titrations")
    return `${use} lot ${name}, which was never titrated: its row of Titrations will be gone.`;
  const gone = loses === "acid value" ? `${theirs} acid value` : "its row of Lots";
  return `${use} lot ${name}: ${gone} will be gone.`;
}

/** Said before rows are deleted that others look up. */
export function stillNamedWords(named: readonly StillNamed[]): string {
  const shown = named.slice(0, named.length > namedOneByOne + 1 ? namedOneByOne : undefined);
  const rest = named.length - shown.length;
  const more = rest > 0 ? [`So it is with ${counted(rest, "other name")} in these rows.`] : [];
  return [...shown.map(namedWords), ...more, "Delete all the same? Undo brings it back."].join(" ");
}

/** @param formulas those that read cells by a text */
export const byTextWords = (act: StructuralAct, formulas: number): string =>
  formulas === 0 || act.do === "move-sheet"
    ? ""
    : ` ${counted(formulas, "formula")} with INDIRECT may name it in a text, which does not follow: look at ${formulas === 1 ? "it" : "them"}.`;
