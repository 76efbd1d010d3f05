/** What one is told of a file just saved, and of a workbook that is not worked out to its end. */
import { counted } from "../../sheet/counted";
import type { GridState } from "../file/grid-state";
import type { Edits } from "../file/edits-of";
import type { Writing } from "../file/session";

/** @param hasOurs the workbook calls functions of the add-in */
const left = (formulas: number, hasOurs: boolean): string => {
  if (formulas === 0) return "";
  const names = hasOurs
    ? " A program without the add-in then shows #NAME? where TITRE functions are called."
    : "";
  return ` ${counted(formulas, "formula")} got no new result in the file: the one of before is kept, which may no longer hold, or there is none. A spreadsheet program works them out when it opens the file; in LibreOffice press Ctrl+Shift+F9.${names}`;
};

/** Said when what the cells show may be older than what was typed. */
export const stoppedWords =
  "Working out this workbook stopped before its end: some results are old. Undo the last change, or open the file again.";

export const callsOurs = ({ sheets }: GridState): boolean =>
  sheets.some(({ cells }) =>
    [...cells.values()].some((row) =>
      [...row.values()].some(({ formula }) => /\bTITRE\./i.test(formula)),
    ),
  );

const passing = new Set(["set-cell", "set-width", "work-out-on-opening"]);

/** Does the file now have something, a sheet or a table, that it did not have? */
export const addsToFile = ({ edits }: Edits): boolean =>
  edits.some(({ do: what }) => !passing.has(what));

/** After such a save the grid can only go on from here. */
const noWayBack = " You cannot undo past this point.";

/** Said once a visit, of a workbook that calls functions of the add-in. */
const handOn = " For somebody without Titrebook, make a partner copy in Share.";

/** @param put where it was put, in a sentence */
export function savedWords(
  put: string,
  given: Edits,
  hasOurs = false,
  isToldToHandOn = true,
  isRestructured = false,
): string {
  const { edits, leftAsTheyWere, looksLost } = given;
  const cells = edits.filter((edit) => edit.do === "set-cell").length;
  const what = isRestructured
    ? `Its rows, columns and sheets are as you changed them${cells === 0 ? "" : `, and ${counted(cells, "cell")} written`}. It was read back and is right.`
    : edits.length === 0
      ? "Nothing was changed since the last save, so it is the same file, byte for byte."
      : `${counted(cells, "cell")} written, the rest as it was. It was read back and is right.`;
  const looks =
    looksLost === 0
      ? ""
      : ` The format of ${counted(looksLost, "cell")} could not be saved in full.`;
  return `${put} ${what}${left(leftAsTheyWere, hasOurs)}${looks}${addsToFile(given) ? noWayBack : ""}${hasOurs && !isToldToHandOn ? handOn : ""}`;
}

/** The same, in the order of a visit's saves. @param hasOurs the workbook calls functions of the add-in */
export function wordsOfVisit(): (
  put: string,
  given: Pick<Writing, "edits" | "isRestructured">,
  hasOurs: boolean,
) => string {
  let isTold = false;
  return (put, { edits, isRestructured }, hasOurs) => {
    const words = savedWords(put, edits, hasOurs, isTold, isRestructured);
    isTold ||= hasOurs;
    return words;
  };
}
