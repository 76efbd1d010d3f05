/** LibreOffice as a judge of files: what it shows of every sheet, recalculated or as the file has it. */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** Cells of a sheet, row by row, as text with all digits. */
export type Shown = readonly (readonly string[])[];

const program = process.env.SOFFICE ?? "soffice";

/** By file, then by sheet. */
export type ShownFiles = ReadonlyMap<string, ReadonlyMap<string, Shown>>;

/** Every sheet of a workbook, figures as they are held: 15 digits. */
const allSheets = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

/** 0 always works everything out anew, 1 never does. */
const settings = (mode: 0 | 1) => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>${mode}</value></prop></item></oor:items>`;

function cellsOf(csv: string): Shown {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\n|$)/g)) {
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain ?? "");
    if (end === "\n") rows.push([]);
  }
  return rows;
}

/** All files in one start of the program. */
export function shownBy(files: ReadonlyMap<string, Uint8Array>, mode: 0 | 1): ShownFiles {
  const folder = mkdtempSync(join(tmpdir(), "patched-"));
  try {
    mkdirSync(join(folder, "profile", "user"), { recursive: true });
    writeFileSync(join(folder, "profile", "user", "registrymodifications.xcu"), settings(mode));
    for (const [name, bytes] of files) writeFileSync(join(folder, `${name}.xlsx`), bytes);
    execFileSync(
      program,
      [
        `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`,
        ...["--headless", "--convert-to", allSheets, "--outdir", join(folder, "out")],
        ...[...files.keys()].map((name) => join(folder, `${name}.xlsx`)),
      ],
      { stdio: "ignore", timeout: 290_000 },
    );
    const made = readdirSync(join(folder, "out"));
    return new Map(
      [...files.keys()].map((name) => {
        const sheets = made.filter((file) => file.startsWith(`${name}-`));
        return [
          name,
          new Map(
            sheets.map((file) => [
              file.slice(name.length + 1, -".csv".length),
              cellsOf(readFileSync(join(folder, "out", file), "utf8")),
            ]),
          ),
        ];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Looked for, not started: to start it takes a second in every file of tests. */
export function hasLibreOffice(): boolean {
  try {
    execFileSync("sh", ["-c", 'command -v "$0"', program], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
