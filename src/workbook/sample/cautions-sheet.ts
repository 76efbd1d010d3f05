/** The cautions on a sheet of their own, to be printed and hung beside the vessel. */
import { cautions } from "../../core/batch/cautions";
import type { BookSheet } from "../book";
import { caution, title, words } from "./cells";

const rows = [
  [title("Cautions")],
  [
    words(
      "The usual cautions (common practice, no source). Print this sheet and hang it where the work is done.",
    ),
  ],
  [],
  ...cautions.map((each) => [caution(each)]),
];

export const cautionsSheet: BookSheet = {
  name: "Cautions",
  rows,
  columnWidths: [110],
  tables: [],
  frozenRows: 1,
  print: {
    area: { row: 0, column: 0, rows: rows.length, columns: 1 },
    landscape: true,
    fitToWidth: true,
  },
};
