/** The `LyeLots` table: a row for each container of lye on the shelf, with the assay of its label. */
import type { LyeLotRecord } from "../record/lye-lot-record";
import { baseChoices, type RecordTable, typed } from "./column";

export const lyeLotsTable: RecordTable<LyeLotRecord> = {
  name: "LyeLots",
  title: "Lye lots",
  guidance:
    "One row for each container of lye. Batch offers those of its base, the latest first, each with its assay.",
  what: "lye lot",
  tellingWords: "same base, same lot, same assay",
  columns: [
    typed("Lot", 14, "As the container is marked.", {
      of: ({ lot }) => lot,
      tells: true,
      isEssential: true,
    }),
    typed("Base", 10, "What the lye is.", {
      choices: baseChoices,
      of: ({ base }) => base,
      tells: true,
      isEssential: true,
    }),
    typed("Assay %", 9, "From its label: 90, not 0.90.", {
      format: "0.0##",
      of: ({ assay }) => assay,
      tells: true,
      isEssential: true,
    }),
    typed("Since", 12, "Day it was opened, or put down here.", {
      format: "yyyy-mm-dd",
      of: ({ date }) => date,
    }),
    typed("Note", 40, "Anything else: who sold it, when it is used up.", {
      of: ({ note }) => note,
    }),
  ],
};
