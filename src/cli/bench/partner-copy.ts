/** A partner copy of 60,000 formulas, beside unzipping and zipping the same file, and how it grows. */
import { unzipSync, zipSync } from "fflate";
import { shareWorkbook } from "../../partner/sharing";
import { isFileProblem, sayFile } from "../../xlsx";
import { held, type Measure } from "./figure";
import { growthOf } from "./growth";
import { fileOf, largeFile } from "./large-file";
import { byTurns, quietOf } from "./measure";

const budgeted = 20_000;

/** 100,000 rows of three formulas would come to more than a file may hold: these are of one, a short one. */
const shortRow = (row: number): string => {
  const n = String(row);
  const formula = `<f>_xldudf_TITRE_FFAFROMACIDVALUE(A${n})</f><v>1.1057</v>`;
  return `<row r="${n}"><c r="A${n}"><v>2.2</v></c><c r="B${n}">${formula}</c></row>`;
};

const shortFile = (rows: number): Uint8Array =>
  fileOf(Array.from({ length: rows }, (_, at) => shortRow(at + 1)));

const copying = (bytes: Uint8Array, formulas: number) => (): void => {
  const shared = shareWorkbook(bytes, { kind: "partner", fileName: "log.xlsx" });
  if (isFileProblem(shared)) throw new Error(sayFile(shared));
  if (shared.report.formulas !== formulas) throw new Error("not every formula was converted");
};

async function run() {
  const bytes = largeFile(budgeted);
  const timed = await byTurns(
    [
      { name: "copy", run: copying(bytes, 3 * budgeted) },
      { name: "unzip and zip", run: () => zipSync(unzipSync(bytes)) },
    ],
    3,
  );
  const taken = quietOf(timed, "copy");
  const what = "partner copy of 60,000 formulas";
  return [
    held(what, taken / 1000, 2, "s"),
    held(what, taken / quietOf(timed, "unzip and zip"), 10, "x unzipping and zipping the file", 1),
    ...(await growthOf("partner copy", (rows) => copying(shortFile(rows), rows))),
  ];
}

export const partnerCopy: Measure = { name: "partner copy", run };
