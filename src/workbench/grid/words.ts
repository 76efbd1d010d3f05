/** Words the embedded spreadsheet looks for and has in no language: it would show their keys. */
export const missingWords = {
  "sheets-formula": {
    progress: {
      analyzing: "Finding what depends on what",
      calculating: "Working out",
      "array-analysis": "Finding what depends on what",
      "array-calculation": "Working out",
      done: "Done",
    },
  },
};
