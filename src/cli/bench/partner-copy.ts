/** A partner copy of 60,000 formulas, beside unzipping and zipping the same file, and how it grows. */
import { unzipSync, zipSync } from "fflate";
import { shareWorkbook } from "../../workbook/sharing";
import { isFileProblem, sayFile } from "../../workbook/xlsx";
import { type Figure, held, told } from "./figure";
import { largeFile } from "./large-file";
import { byTurns, quietOf } from "./measure";

const budgeted = 20_000;
const sizes = [100, 1_000, 10_000];

const formulasOf = (rows: number): number => 3 * rows;

function copying(rows: number): () => void {
  const bytes = largeFile(rows);
  return () => {
    const shared = shareWorkbook(bytes, { kind: "partner", fileName: "log.xlsx" });
    if (isFileProblem(shared)) throw new Error(sayFile(shared));
    if (shared.report.formulas !== formulasOf(rows)) {
      throw new Error("not every formula was converted");
    }
  };
}

export async function partnerCopy(): Promise<Figure[]> {
  const bytes = largeFile(budgeted);
  const timed = await byTurns(
    [
      { name: "copy", run: copying(budgeted) },
      { name: "unzip and zip", run: () => zipSync(unzipSync(bytes)) },
      ...sizes.map((rows) => ({ name: String(rows), run: copying(rows) })),
    ],
    3,
  );
  const taken = quietOf(timed, "copy");
  const what = "partner copy of 60,000 formulas";
  return [
    held(what, taken / 1000, 2, "s"),
    held(what, taken / quietOf(timed, "unzip and zip"), 10, "x unzipping and zipping the file", 1),
    ...sizes.map((rows) =>
      told(
        `partner copy, ${formulasOf(rows).toLocaleString("en-GB")} formulas`,
        (quietOf(timed, String(rows)) * 1000) / formulasOf(rows),
        "us a formula",
        0,
      ),
    ),
  ];
}
