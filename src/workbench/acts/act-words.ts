/** What an act did, in a sentence. */
import { columnLetters } from "../../sheet/cell-name";
import { counted } from "../../sheet/counted";
import type { Step } from "./act-history";
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

/** @param formulas those that read cells by a text */
export const byTextWords = (act: StructuralAct, formulas: number): string =>
  formulas === 0 || act.do === "move-sheet"
    ? ""
    : ` ${counted(formulas, "formula")} with INDIRECT may name it in a text, which does not follow: look at ${formulas === 1 ? "it" : "them"}.`;
