/** The words of the embedded spreadsheet. */
import { merge } from "@univerjs/core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import tableWords from "@univerjs/sheets-table/locale/en-US";

/** It looks for these and has them in no language: it would show their keys. */
const missingWords = {
  "sheets-formula": {
    progress: {
      analyzing: "Finding what depends on what",
      calculating: "Working out",
      "array-analysis": "Finding what depends on what",
      "array-calculation": "Working out",
      done: "Done",
    },
    functionList: {
      LET: {
        functionParameter: {
          name1: { name: "name1", detail: "The first name." },
          nameValue1: { name: "value1", detail: "What the first name stands for." },
          calculationOrName2: {
            name: "calculation_or_name2",
            detail:
              "A calculation with the names given so far, as the last argument; or another name.",
          },
          nameValue2: { name: "value2", detail: "What the name before it stands for." },
          calculationOrName3: {
            name: "calculation_or_name3",
            detail:
              "A calculation with the names given so far, as the last argument; or another name.",
          },
        },
      },
    },
  },
};

/** Word by word: its own way of putting words together would lose every function's to the few above. */
export const words = merge({}, coreWords, tableWords, missingWords);
