/** What one is told of a file just saved. */
import type { Edits } from "../file/edits-of";

const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count.toLocaleString("en-GB")} ${many}`;

const left = (formulas: number): string =>
  formulas === 0
    ? ""
    : ` ${counted(formulas, "formula", "formulas")} could not be worked out here and kept the result of before: let a spreadsheet program work them out.`;

/** Does the file now have something, a sheet or a table, that it did not have? */
export const addsToFile = ({ edits }: Edits): boolean =>
  edits.some(({ do: what }) => what !== "set-cell" && what !== "set-width");

/** After such a save the grid can only go on from here. */
const noWayBack =
  " What the file has gained cannot be taken back out of it, so Undo begins anew from here.";

export function savedWords(name: string, given: Edits): string {
  const { edits, leftAsTheyWere, looksLost } = given;
  const cells = edits.filter((edit) => edit.do === "set-cell").length;
  const what =
    edits.length === 0
      ? "Nothing was changed, so it is the same file, byte for byte."
      : `${counted(cells, "cell", "cells")} written; what is not concerned is as it was. It was read back and is right.`;
  const looks =
    looksLost === 0
      ? ""
      : ` The look of ${counted(looksLost, "cell", "cells")} could not be saved in full.`;
  return `Saved as ${name}, in your downloads. ${what}${left(leftAsTheyWere)}${looks}${addsToFile(given) ? noWayBack : ""}`;
}
