/** partner-logbook.xlsx: the partner copy of logbook.xlsx, as `npm run share` makes it, workings filled in. */
import { shareWorkbook } from "../../partner/sharing";
import { isFileProblem, sayFile } from "../../xlsx";
import { logbook } from "./logbook";
import type { Sample } from "./sample";
import { withResults } from "./with-results";

export const partnerLogbook: Sample = {
  file: "partner-logbook.xlsx",
  async make(made) {
    const shared = shareWorkbook(await made(logbook.file), {
      kind: "partner",
      fileName: logbook.file,
    });
    if (isFileProblem(shared)) throw new Error(`partner copy: ${sayFile(shared)}`);
    return withResults(partnerLogbook.file, shared.bytes);
  },
};
