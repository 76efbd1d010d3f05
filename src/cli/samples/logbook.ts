/** logbook.xlsx: the logbook of the workbench as a file, with its lots and cautions. */
import type { Book, BookSheet } from "../../workbook/book";
import { sampleLogbook } from "../../workbook/sample/logbook";
import { cautionsSheet } from "./cautions-sheet";
import { lotsSheet } from "./lots-sheet";
import { sampleOf } from "./sample";
import { startSheet } from "./start-sheet";

function sheetOf(book: Book, name: string): BookSheet {
  const found = book.sheets.find((sheet) => sheet.name === name);
  if (!found) throw new RangeError(`the logbook has no sheet "${name}"`);
  return found;
}

const start = startSheet({
  title: "The logbook of Saltmarsh Ferries",
  about:
    "A demonstration. The co-operative, its three quayside kitchens, its lots and its figures are invented: change anything.",
  steps: [
    "Open the sheet Titrations and change a titre. Corrected titre, acid value and % FFA of that row follow.",
    "Open the sheet Batches: the catalyst and the methanol of every batch of that lot follow too.",
    "The sheet Lots lists the drums and draws the acid of each kitchen's oil over time.",
    "Select a cell with a result: the pane beside the sheet shows how it was worked out.",
    "The sheet Replicates looks closely at one lot; Checks compares the arithmetic with published figures.",
    "To start a logbook of your own, empty the yellow cells of Lots, Titrations and Batches and type over them.",
    "In any free cell type =TITRE. and choose a function.",
  ],
});

function logbookFile(): Book {
  const book = sampleLogbook();
  const own = ["Titrations", "Batches", "Replicates", "Checks"].map((name) => sheetOf(book, name));
  const [titrations, batches, ...closer] = own as [BookSheet, BookSheet, ...BookSheet[]];
  return {
    name: book.name,
    sheets: [start, lotsSheet, titrations, batches, ...closer, cautionsSheet],
  };
}

export const logbook = sampleOf("logbook.xlsx", logbookFile);
