/**
 * The second opinion of LibreOffice, through plain formulas in a sheet. Run from the top folder:
 *   npx tsx tests/second-opinion/from-libreoffice.ts
 * It writes fixtures/libreoffice.json. Nothing of ours is used here; the sets of readings are those
 * that R made.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type DeviationRow, fixture, fixtureFile } from "./fixtures";

/** Each formula with the figures it was asked for. */
export interface Asked {
  readonly student: [freedom: number, outside: number, formula: string][];
  readonly grubbs: [count: number, alpha: number, formula: string][];
  /** By the place of the set in R's fixture. */
  readonly means: [set: number, formula: string][];
  readonly deviations: [set: number, formula: string][];
}

const risks = [0.1, 0.05, 0.01];
const upTo = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, place) => from + place);

const critical = (n: number, alpha: number): string => {
  const t = `TINV(${alpha}/${n};${n - 2})`;
  return `(${n}-1)/SQRT(${n})*SQRT(${t}^2/(${n}-2+${t}^2))`;
};

export function asked(): Asked {
  const sets = fixture<DeviationRow>("sample-deviations").rows.map(([readings]) => readings);
  return {
    student: upTo(1, 120).flatMap((nu) =>
      risks.map((p): [number, number, string] => [nu, p, `TINV(${p};${nu})`]),
    ),
    grubbs: upTo(3, 100).flatMap((n) =>
      risks.map((alpha): [number, number, string] => [n, alpha, critical(n, alpha)]),
    ),
    means: sets.map((readings, set) => [set, `AVERAGE(${readings.join(";")})`]),
    deviations: sets.map((readings, set) => [set, `STDEV(${readings.join(";")})`]),
  };
}

/** A flat spreadsheet of one column of formulas. */
const sheet = (formulas: readonly string[]): string => `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
 office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="asked">
${formulas.map((formula) => `<table:table-row><table:table-cell table:formula="of:=${formula}"/></table:table-row>`).join("\n")}
</table:table></office:spreadsheet></office:body></office:document>`;

/** Numbers as the program holds them, not as the cell shows them: 15 digits. */
const csvFilter = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false";

/** What LibreOffice makes of each formula. */
function evaluate(formulas: readonly string[], soffice = "soffice"): number[] {
  const folder = mkdtempSync(join(tmpdir(), "second-opinion-"));
  try {
    writeFileSync(join(folder, "asked.fods"), sheet(formulas));
    execFileSync(
      soffice,
      [
        `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`,
        "--headless",
        "--convert-to",
        csvFilter,
        "--outdir",
        folder,
        join(folder, "asked.fods"),
      ],
      { stdio: "pipe", timeout: 100_000 },
    );
    const csv = readFileSync(join(folder, "asked.csv"), "utf8").replaceAll('"', "");
    const answers = csv.trim().split("\n").map(Number);
    if (answers.length !== formulas.length || answers.some(Number.isNaN)) {
      throw new Error("LibreOffice did not answer every formula with a number");
    }
    return answers;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** All answers, in the order asked. */
export function libreOffice(soffice?: string): Record<keyof Asked, number[]> {
  const questions = asked();
  const formulas = Object.values(questions)
    .flat()
    .map((row) => String(row[row.length - 1]));
  const answers = evaluate(formulas, soffice);
  let taken = 0;
  const take = (count: number): number[] => answers.slice(taken, (taken += count));
  return {
    student: take(questions.student.length),
    grubbs: take(questions.grubbs.length),
    means: take(questions.means.length),
    deviations: take(questions.deviations.length),
  };
}

const isMain =
  process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href;
if (isMain) writeFileSync(fixtureFile("libreoffice"), `${JSON.stringify(libreOffice())}\n`);
