/**
 * A partner at LibreOffice: opens a workbook as anybody does, results as the file has them, types into
 * a cell, sorts, puts in a row, and saves it as a workbook of the same kind. Done by a macro in a profile
 * of its own.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const program = process.env.SOFFICE ?? "soffice";

export type Deed =
  | { readonly do: "type"; readonly sheet: string; readonly cell: string; readonly value: number }
  /** Falling, by a column of the area counted from 0. */
  | { readonly do: "sort"; readonly sheet: string; readonly area: string; readonly by: number }
  /** Above a row counted from 0. */
  | { readonly do: "insert-row"; readonly sheet: string; readonly row: number }
  /** Everything, whether it seems to need it or not. */
  | { readonly do: "work-out-all" };

const doctype = (kind: string) =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE ${kind} PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "${kind.split(":")[1] ?? ""}.dtd">`;

const library = `${doctype("library:library")}
<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false"><library:element library:name="Module1"/></library:library>`;

function linesFor(deed: Deed): string[] {
  if (deed.do === "work-out-all") return ["book.calculateAll()"];
  const sheet = `sheet = book.Sheets.getByName("${deed.sheet}")`;
  switch (deed.do) {
    case "type":
      return [sheet, `sheet.getCellRangeByName("${deed.cell}").setValue(${String(deed.value)})`];
    case "insert-row":
      return [sheet, `sheet.Rows.insertByIndex(${String(deed.row)}, 1)`];
    case "sort":
      return [
        sheet,
        `field(0).Field = ${String(deed.by)}`,
        "field(0).IsAscending = False",
        'how(0).Name = "SortFields"',
        "how(0).Value = field()",
        'how(1).Name = "ContainsHeader"',
        "how(1).Value = False",
        `sheet.getCellRangeByName("${deed.area}").sort(how())`,
      ];
  }
}

function macro(from: string, to: string, deeds: readonly Deed[]): string {
  const lines = [
    "Sub Edit",
    "Dim hidden(0) As New com.sun.star.beans.PropertyValue",
    'hidden(0).Name = "Hidden"',
    "hidden(0).Value = True",
    `book = StarDesktop.loadComponentFromURL("${from}", "_blank", 0, hidden())`,
    "Dim field(0) As New com.sun.star.table.TableSortField",
    "Dim how(1) As New com.sun.star.beans.PropertyValue",
    ...deeds.flatMap(linesFor),
    "Dim kind(0) As New com.sun.star.beans.PropertyValue",
    'kind(0).Name = "FilterName"',
    'kind(0).Value = "Calc MS Excel 2007 XML"',
    `book.storeToURL("${to}", kind())`,
    "book.close(True)",
    "StarDesktop.terminate()",
    "End Sub",
  ];
  return `${doctype("script:module")}
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">${lines.join("\n").replaceAll('"', "&quot;")}</script:module>`;
}

/** The file as the partner saves it. */
export function savedByPartner(bytes: Uint8Array, deeds: readonly Deed[]): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), "partner-"));
  const run = (...words: string[]): void => {
    const profile = pathToFileURL(join(folder, "profile")).href;
    const options = [`-env:UserInstallation=${profile}`, "--headless", "--norestore", ...words];
    execFileSync(program, options, { stdio: "ignore", timeout: 110_000 });
  };
  try {
    writeFileSync(join(folder, "copy.xlsx"), bytes);
    // The first start makes the profile, and would put an empty macro in place of ours.
    run("--terminate_after_init");
    const basic = join(folder, "profile", "user", "basic", "Standard");
    mkdirSync(basic, { recursive: true });
    const url = (name: string) => pathToFileURL(join(folder, name)).href;
    writeFileSync(join(basic, "script.xlb"), library);
    writeFileSync(join(basic, "Module1.xba"), macro(url("copy.xlsx"), url("saved.xlsx"), deeds));
    run("macro:///Standard.Module1.Edit");
    return new Uint8Array(readFileSync(join(folder, "saved.xlsx")));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
