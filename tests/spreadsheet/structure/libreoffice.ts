/**
 * LibreOffice as a second hand: it does an act on a workbook and tells what the workbook then holds, or
 * tells what it holds as it is. A Basic macro in a profile of its own does it; the program must have been
 * started once in that profile before it takes a macro from it.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { LinesAct } from "../../../src/xlsx/structure/act";
import { root } from "../../rules/sources-of";

const program = process.env.SOFFICE ?? "soffice";

/** Rows put in order by one of the columns, which begin with the first of the sheet. */
interface SortAct {
  readonly do: "sort-up" | "sort-down";
  readonly sheet: string;
  readonly first: number;
  readonly count: number;
  readonly column: number;
  readonly columns: number;
}

/** Filters that the file tells are asked once more which rows they let through. */
interface FilterAgain {
  readonly do: "filter-again";
}

export interface Job {
  readonly bytes: Uint8Array;
  /** Left out: the workbook is told as it is. */
  readonly act?: LinesAct | SortAct | FilterAgain;
}

const doctype = (kind: string, dtd: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE ${kind} PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "${dtd}.dtd">\n`;

const library = `${doctype("library:library", "library")}<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false"><library:element library:name="Acts"/></library:library>`;

const moduleOf = (basic: string): string => {
  const text = basic.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  return `${doctype("script:module", "module")}<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Acts" script:language="StarBasic">${text}</script:module>`;
};

function run(folder: string, ...given: string[]): void {
  const profile = pathToFileURL(join(folder, "profile")).href;
  execFileSync(
    program,
    [`-env:UserInstallation=${profile}`, "--headless", "--nologo", "--norestore", ...given],
    { stdio: "ignore", timeout: 280_000 },
  );
}

const lineOf = ({ act }: Job, index: number): string => {
  const book = `book${String(index)}.xlsx`;
  if (!act) return `${book}||||`;
  if (act.do === "filter-again") return `${book}|filter-again|||`;
  const line = "before" in act ? act.before : act.first;
  const across = "column" in act ? [act.column, act.columns] : [];
  return [book, act.do, act.sheet, line, act.count, ...across].join("|");
};

/** What is told of each, as lines, in one start of the program. */
export function toldBy(jobs: readonly Job[]): string[][] {
  const folder = mkdtempSync(join(tmpdir(), "acts-"));
  try {
    run(folder, "--terminate_after_init");
    const standard = join(folder, "profile", "user", "basic", "Standard");
    const basic = readFileSync(join(root, "tests/spreadsheet/structure/acts.bas"), "utf8");
    writeFileSync(join(standard, "script.xlb"), library);
    writeFileSync(join(standard, "Acts.xba"), moduleOf(basic.replaceAll("FOLDER", folder)));
    for (const [index, { bytes }] of jobs.entries()) {
      writeFileSync(join(folder, `book${String(index)}.xlsx`), bytes);
    }
    writeFileSync(join(folder, "jobs.txt"), `${jobs.map(lineOf).join("\n")}\n`);
    run(folder, "macro:///Standard.Acts.Main");
    const told = readFileSync(join(folder, "told.txt"), "utf8");
    if (!told.trimEnd().endsWith("end")) throw new Error(`it stopped after ${told.slice(-400)}`);
    const books = told
      .trimEnd()
      .slice(0, -"end".length)
      .split(/^book\|.*\n/m);
    return books.slice(1).map((lines) => lines.split("\n").filter((line) => line !== ""));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
