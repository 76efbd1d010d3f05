/**
 * LibreOffice does an act on a workbook itself: by a macro in a profile of its own. What it then holds,
 * formulas as it writes them and what its cells show, is set beside what it makes of a file of ours.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { StructuralAct } from "../../../src/xlsx";

const program = process.env.SOFFICE ?? "soffice";

export interface Asked {
  readonly bytes: Uint8Array;
  /** Undefined: only looked at. */
  readonly act?: StructuralAct;
}

/** Lines of text: sheets in their order, names, and each cell that holds something. */
export type Held = readonly string[];

const text = (words: string): string => `"${words.replaceAll('"', '""')}"`;

/** The act in LibreOffice's own words, on a document called "book". */
function basic(act: StructuralAct | undefined): string {
  if (!act) return "";
  const sheet = `book.Sheets.getByName(${text(act.sheet)})`;
  switch (act.do) {
    case "rename-sheet":
      return `${sheet}.setName(${text(act.name)})`;
    case "delete-sheet":
      return `book.Sheets.removeByName(${text(act.sheet)})`;
    case "move-sheet":
      // it counts with the sheet still in its old place
      return `at = ${String(act.to)} : if ${sheet}.RangeAddress.Sheet < at then at = at + 1
book.Sheets.moveByName(${text(act.sheet)}, at)`;
    case "insert-rows":
      return `${sheet}.Rows.insertByIndex(${String(act.before)}, ${String(act.count)})`;
    case "insert-columns":
      return `${sheet}.Columns.insertByIndex(${String(act.before)}, ${String(act.count)})`;
    case "delete-rows":
      return `${sheet}.Rows.removeByIndex(${String(act.first)}, ${String(act.count)})`;
    case "delete-columns":
      return `${sheet}.Columns.removeByIndex(${String(act.first)}, ${String(act.count)})`;
  }
}

const dump = `
sub dump(book, path)
  dim n as integer : n = FreeFile
  open path for output as #n
  for each sheet in book.Sheets
    print #n, "sheet" & chr(9) & sheet.Name
    cursor = sheet.createCursor() : cursor.gotoEndOfUsedArea(false)
    area = sheet.getCellRangeByPosition(0, 0, cursor.RangeAddress.EndColumn, cursor.RangeAddress.EndRow)
    formulas = area.getFormulaArray() : values = area.getDataArray()
    for r = 0 to ubound(formulas)
      row = formulas(r) : shown = values(r)
      for c = 0 to ubound(row)
        if row(c) <> "" then print #n, sheet.Name & chr(9) & r & chr(9) & c & chr(9) & row(c) & chr(9) & shown(c)
      next c
    next r
  next sheet
  for each item in book.NamedRanges
    print #n, "name" & chr(9) & item.Name & chr(9) & item.Content
  next item
  close #n
end sub
`;

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };
const escaped = (words: string): string => words.replace(/[&<>]/g, (mark) => entities[mark] ?? "");

/** The module that a new profile has, empty. */
const module = (code: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?><!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd"><script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">${escaped(code)}</script:module>`;

const settings = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
<item oor:path="/org.openoffice.Office.Common/Security/Scripting"><prop oor:name="MacroSecurityLevel" oor:op="fuse"><value>0</value></prop></item></oor:items>`;

/** All of them in one start of the program. */
export function heldAfter(all: ReadonlyMap<string, Asked>): ReadonlyMap<string, Held> {
  const folder = mkdtempSync(join(tmpdir(), "acted-"));
  try {
    mkdirSync(join(folder, "profile", "user"), { recursive: true });
    writeFileSync(join(folder, "profile", "user", "registrymodifications.xcu"), settings);
    const names = [...all.keys()];
    const runs = [...all.values()].map(({ bytes, act }, index) => {
      const file = join(folder, `${String(index)}.xlsx`);
      writeFileSync(file, bytes);
      return `book = StarDesktop.loadComponentFromURL(${text(pathToFileURL(file).href)}, "_blank", 0, Array(hidden))
${basic(act)}
book.calculateAll()
dump(book, ${text(join(folder, `${String(index)}.txt`))})
book.close(true)`;
    });
    const main = `sub Main
dim hidden as new com.sun.star.beans.PropertyValue
hidden.Name = "Hidden" : hidden.Value = true
${runs.join("\n")}
end sub
${dump}`;
    const run = (what: string) =>
      execFileSync(
        program,
        [
          `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`,
          ...["--headless", "--norestore", what],
        ],
        { stdio: "ignore", timeout: 290_000 },
      );
    // a profile is made at the first start, and with it whatever stood in the place of its macros
    run("--terminate_after_init");
    const standard = join(folder, "profile", "user", "basic", "Standard");
    writeFileSync(join(standard, "Module1.xba"), module(main));
    run("macro:///Standard.Module1.Main");
    return new Map(
      names.map((name, index) => [
        name,
        readFileSync(join(folder, `${String(index)}.txt`), "utf8")
          .split("\n")
          .filter(Boolean),
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
