/** A partner copy of 60,000 formulas, beside unzipping and zipping the same file, and how it grows. */
import { unzipSync, zipSync } from "fflate";
import { shareWorkbook } from "../../workbook/sharing";
import { isFileProblem, sayFile } from "../../workbook/xlsx";
import { held, type Measure } from "./figure";
import { growthOf } from "./growth";
import { largeFile } from "./large-file";
import { byTurns, quietOf } from "./measure";

const budgeted = 20_000;

function copying(rows: number, ofOurs?: number): () => void {
  const bytes = largeFile(rows, ofOurs);
  return () => {
    const shared = shareWorkbook(bytes, { kind: "partner", fileName: "log.xlsx" });
    if (isFileProblem(shared)) throw new Error(sayFile(shared));
    if (shared.report.formulas !== rows * (ofOurs ?? 3)) {
      throw new Error("not every formula was converted");
    }
  };
}

async function run() {
  const bytes = largeFile(budgeted);
  const timed = await byTurns(
    [
      { name: "copy", run: copying(budgeted) },
      { name: "unzip and zip", run: () => zipSync(unzipSync(bytes)) },
    ],
    3,
  );
  const taken = quietOf(timed, "copy");
  const what = "partner copy of 60,000 formulas";
  return [
    held(what, taken / 1000, 2, "s"),
    held(what, taken / quietOf(timed, "unzip and zip"), 10, "x unzipping and zipping the file", 1),
    // three formulas in each of 100,000 rows would come to more than a file may hold
    ...(await growthOf("partner copy of a formula a row", (rows) => copying(rows, 1))),
  ];
}

export const partnerCopy: Measure = { name: "partner copy", run };
