/** A workbook that opens the pane beside it, and shows whether the functions answer. */
import type { Book, BookCell } from "../../../sheet/book";
import { sheetOfSentences, title, words } from "../../../workbook/sample/cells";
import { type AddIn, isFileProblem, newXlsx, patchXlsx, sayFile } from "../../../xlsx";

/** Kept as #NAME? until the add-in answers: a figure saved here would prove nothing. */
const asked: BookCell = {
  formula: "=TITRE.ACIDVALUE(2.3,0.1,10)",
  results: [[{ error: "#NAME?" }]],
  style: "calculated",
  align: "left",
};

const rows: BookCell[][] = [
  [title("Titrebook starts here")],
  [
    words(
      "Once it is installed, its pane opens beside this sheet. Leave this file where you find it: opening it opens the pane.",
    ),
  ],
  [
    words(
      "The cell below asks it one question. 1.2903 means that it answers. While it says #NAME?, press Ask again in the pane.",
    ),
  ],
  [asked],
  [
    words(
      "No pane? Home, Add-ins, and Titrebook below Developer Add-ins. Not there? Run the script beside this file again, and start Excel anew.",
    ),
  ],
  [words("Then open your own workbook, or an empty one: Open Titrebook stands on the Home tab.")],
  [
    words(
      "A workbook for somebody without Titrebook: use Share in the pane, which writes plain formulas.",
    ),
  ],
];

const book: Book = { name: "Titrebook start", sheets: [sheetOfSentences("Start here", rows)] };

export function startWorkbook(addIn: AddIn): Uint8Array {
  const plain = newXlsx(book);
  const made = isFileProblem(plain) ? plain : patchXlsx(plain, [{ do: "open-pane", ...addIn }]);
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}
