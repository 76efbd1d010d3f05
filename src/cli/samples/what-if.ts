/** what-if.xlsx: what a batch takes, for several batch sizes and acid values at once. */
import type { Book } from "../../sheet/book";
import { sampleOf } from "./sample";
import { startSheet } from "../../workbook/sample/start-sheet";
import { whatIfSheet } from "./what-if/sheet";

const whatIfBook = (): Book => ({
  name: "What if",
  sheets: [
    startSheet({
      title: "What if: batch sizes and acid values",
      about:
        "How much lye and methanol a batch takes, for several batch sizes and acid values at once. The figures belong to Saltmarsh Ferries, an invented ferry co-operative: change them to your own.",
      steps: [
        "Open the sheet What if. Choose unit, oil and base; type the assay on the lye's label and your base charge.",
        "Type the batch sizes down the left of the first table and the acid values along its top. The acid value comes from a titration, never from a guess.",
        "Read the catalyst where row and column meet; the second table gives the methanol in the same place, the chart shows the first table.",
        "To print, print the sheet as it is: it fits one page on its long side.",
      ],
    }),
    whatIfSheet,
  ],
});

export const whatIf = sampleOf("what-if.xlsx", whatIfBook);
