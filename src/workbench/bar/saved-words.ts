/** What one is told of a file just saved. */
import { counted } from "../../workbook/counted";
import type { Edits } from "../file/edits-of";

const left = (formulas: number): string =>
  formulas === 0
    ? ""
    : ` ${counted(formulas, "formula")} could not be worked out here and kept the result of before: open the file in a spreadsheet program to have that done.`;

/** Does the file now have something, a sheet or a table, that it did not have? */
export const addsToFile = ({ edits }: Edits): boolean =>
  edits.some(({ do: what }) => what !== "set-cell" && what !== "set-width");

/** After such a save the grid can only go on from here. */
const noWayBack =
  " What was added to the file cannot be taken out of it again, so Undo starts afresh from here.";

export function savedWords(name: string, given: Edits): string {
  const { edits, leftAsTheyWere, looksLost } = given;
  const cells = edits.filter((edit) => edit.do === "set-cell").length;
  const what =
    edits.length === 0
      ? "Nothing was changed, so it is the same file, byte for byte."
      : `${counted(cells, "cell")} written, the rest as it was. It was read back and is right.`;
  const looks =
    looksLost === 0
      ? ""
      : ` The format of ${counted(looksLost, "cell")} could not be saved in full.`;
  return `Saved as ${name}, in your downloads. ${what}${left(leftAsTheyWere)}${looks}${addsToFile(given) ? noWayBack : ""}`;
}
