/** install/: what it writes where, and that its undoing leaves nothing; the scripts run, or are read as cmd reads them. */
import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { unzipSync } from "fflate";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { installFiles } from "../../src/cli/build/install/files";
import { readDirectory } from "../../src/xlsx/zip/directory";
import { root } from "../rules/sources-of";
import { cellIn, opened } from "../xlsx/answers";
import { partsOf } from "../xlsx/files";

const manifest = readFileSync(join(root, "manifest.xml"), "utf8");
const [, id = ""] = /<Id>(.*)<\/Id>/.exec(manifest) ?? [];
const files = installFiles(manifest);
const textOf = (name: string): string => String(files[`install/${name}`]);
const start = new Uint8Array(files["install/start.xlsx"] as Buffer);

/** A home, and a folder for what was unpacked, with all that a name may hold. */
const folder = mkdtempSync(join(tmpdir(), "titrebook install & 'try' $HOME `x` (1) "));
const home = join(folder, "Kim & Co's Mac");
const unpacked = join(folder, "Down loads", "titrebook");
const excel = join(home, "Library/Containers/com.microsoft.Excel");
const wef = join(excel, "Data/Documents/wef");

const run = (script: string) =>
  spawnSync("bash", [join(unpacked, script)], { env: { ...process.env, HOME: home }, cwd: "/" });

beforeEach(() => {
  rmSync(home, { recursive: true, force: true });
  rmSync(unpacked, { recursive: true, force: true });
  mkdirSync(excel, { recursive: true });
  mkdirSync(unpacked, { recursive: true });
  for (const name of ["manifest.xml", "install-mac.sh", "remove-mac.sh"]) {
    writeFileSync(join(unpacked, name), textOf(name));
  }
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe("the scripts for the Mac, run in bash", () => {
  it("put the manifest where Excel looks, under the add-in's own name, and say what is next", () => {
    const ran = run("install-mac.sh");
    expect([ran.status, String(ran.stderr)]).toEqual([0, ""]);
    expect(readFileSync(join(wef, `${id}.manifest.xml`), "utf8")).toBe(manifest);
    expect(String(ran.stdout)).toMatch(/start\.xlsx/);
    expect(run("install-mac.sh").status).toBe(0);
    expect(readdirSync(wef)).toEqual([`${id}.manifest.xml`]);
  });

  it("take out that one file and no other, and the folder only when nothing else is in it", () => {
    run("install-mac.sh");
    writeFileSync(join(wef, "another.manifest.xml"), "of somebody else");
    expect(run("remove-mac.sh").status).toBe(0);
    expect(readdirSync(wef)).toEqual(["another.manifest.xml"]);
    rmSync(join(wef, "another.manifest.xml"));
    run("install-mac.sh");
    const ran = run("remove-mac.sh");
    expect([ran.status, String(ran.stderr), existsSync(wef)]).toEqual([0, "", false]);
    expect(run("remove-mac.sh").status).toBe(0);
  });

  it("say in a sentence what to do where the manifest is missing, or Excel was never started", () => {
    rmSync(excel, { recursive: true });
    const never = run("install-mac.sh");
    expect([never.status, String(never.stdout)]).toEqual([
      1,
      expect.stringMatching(/start it once/),
    ]);
    expect(existsSync(excel)).toBe(false);
    rmSync(join(unpacked, "manifest.xml"));
    const alone = run("install-mac.sh");
    expect([alone.status, String(alone.stdout)]).toEqual([1, expect.stringMatching(/unpack/)]);
  });

  it("say so where the folder cannot be written, and claim nothing", () => {
    // a file stands where the folder should: nothing can be made in it, whoever runs this
    mkdirSync(join(excel, "Data"), { recursive: true });
    writeFileSync(join(excel, "Data/Documents"), "");
    const ran = run("install-mac.sh");
    expect([ran.status, String(ran.stdout)]).toEqual([
      1,
      expect.stringMatching(/could not be written/),
    ]);
    expect(String(ran.stdout)).not.toMatch(/Done/);
  });
});

const windows = ["install-windows.cmd", "remove-windows.cmd"] as const;
const linesOf = (name: string): string[] => textOf(name).split("\r\n");

/** What cmd takes for the end of a command or the place of another, where it stands in no quotes. */
const outsideQuotes = (line: string): string[] =>
  line.split('"').flatMap((piece, at) => (at % 2 === 0 ? (piece.match(/[&|<>()^]/g) ?? []) : []));

/** As cmd does it, before it looks at quotes: each variable replaced by what it holds. */
const expanded = (line: string, held: Readonly<Record<string, string>>): string =>
  line.replace(/%(~dp0|\w+%)/g, (_, name: string) => held[name.replace("%", "")] ?? "");

/** All that a folder's name may hold on Windows. */
const windowsName = fc
  .stringMatching(/^[^\x00-\x1f"<>|:*?/\\%]{1,20}$/)
  .map((name) => name.replaceAll("%", ""));

describe("the scripts for Windows, read as cmd reads them", () => {
  it.each(windows)("%s: every line ends as cmd needs it, and is plain letters", (name) => {
    expect(textOf(name)).toMatch(/^(?:[\x20-\x7e]*\r\n)+$/);
  });

  it.each(windows)("%s: no name of a folder makes two commands of one", (name) => {
    fc.assert(
      fc.property(windowsName, windowsName, (user, place) => {
        const held: Record<string, string> = {
          LOCALAPPDATA: `C:\\Users\\${user}\\AppData\\Local`,
          SystemRoot: "C:\\Windows",
          "~dp0": `C:\\Users\\${user}\\${place}\\titrebook\\`,
        };
        for (const line of linesOf(name)) {
          const [, variable, value] = /^set "(\w+)=(.*)"$/.exec(line) ?? [];
          if (variable !== undefined) held[variable] = expanded(value ?? "", held);
          expect(outsideQuotes(expanded(line, held))).toEqual(outsideQuotes(line));
        }
      }),
    );
  });

  it.each(windows)(
    "%s: goes only to places that are there, and never runs on into a failure",
    (name) => {
      const lines = linesOf(name);
      const places = lines.filter((line) => line.startsWith(":"));
      for (const line of lines) {
        const [, place] = /goto (\w+)/.exec(line) ?? [];
        if (place !== undefined) expect(places).toContain(`:${place}`);
      }
      for (const place of places.filter((each) => each !== ":gone")) {
        expect(lines[lines.indexOf(place) - 1]).toMatch(/^exit \/b [01]$/);
      }
    },
  );

  it.each(windows)("%s: names each program with its folder, and cmd's own words else", (name) => {
    const own =
      /^(?:@echo off|rem |setlocal |set "|if (?:not )?exist "[^"]+" (?:goto|mkdir|del|rmdir)|copy \/y "|"%reg%" (?:add|query|delete) |echo |pause$|exit \/b [01]$|:\w+$|$)/;
    expect(linesOf(name).filter((line) => !own.test(line))).toEqual([]);
  });

  it("write one value, of the user's own, and take out that same value", () => {
    const settings = (name: string) => linesOf(name).filter((line) => line.startsWith("set "));
    expect(settings(windows[0])).toEqual(settings(windows[1]));
    expect(settings(windows[0])).toEqual([
      `set "id=${id}"`,
      'set "key=HKCU\\Software\\Microsoft\\Office\\16.0\\Wef\\Developer"',
      'set "folder=%LOCALAPPDATA%\\Titrebook"',
      'set "reg=%SystemRoot%\\System32\\reg.exe"',
    ]);
    const calls = (name: string) => linesOf(name).filter((line) => line.startsWith('"%reg%"'));
    expect(calls(windows[0])).toEqual([
      '"%reg%" add "%key%" /v "%id%" /t REG_SZ /d "%folder%\\manifest.xml" /f >nul || goto failed',
    ]);
    expect(calls(windows[1])).toEqual([
      '"%reg%" query "%key%" /v "%id%" >nul 2>nul || goto gone',
      '"%reg%" delete "%key%" /v "%id%" /f >nul || goto failed',
    ]);
  });
});

describe("the start workbook", () => {
  it("opens the pane of this add-in, known to the machine itself", () => {
    const parts = partsOf(start);
    expect(parts["xl/webextensions/webextension1.xml"]).toContain(
      `<we:reference id="${id}" version="0.1.0.0" store="developer" storeType="Registry"/>`,
    );
    expect(parts["xl/webextensions/taskpanes.xml"]).toContain('visibility="1"');
    expect(opened(start).kept.some(({ what }) => what === "web extensions")).toBe(true);
  });

  it("asks one question, and holds no answer until the add-in gives one", () => {
    expect(cellIn(opened(start), "A4")).toMatchObject({
      formula: "=TITRE.ACIDVALUE(2.3,0.1,10)",
      value: { error: "#NAME?" },
    });
    expect(String(cellIn(opened(start), "A3")?.value)).toContain("1.2903");
  });

  it("stands with all else in one zip that unpacks into one folder, the same every time", () => {
    const zip = files["install/titrebook.zip"] as Buffer;
    const inside = unzipSync(new Uint8Array(zip));
    const names = [
      "manifest.xml",
      "install-windows.cmd",
      "remove-windows.cmd",
      "install-mac.sh",
      "remove-mac.sh",
      "start.xlsx",
    ];
    expect(Object.keys(inside)).toEqual(names.map((name) => `titrebook/${name}`));
    for (const name of names) {
      expect(
        Buffer.from(inside[`titrebook/${name}`] ?? []).equals(
          Buffer.from(files[`install/${name}`] ?? ""),
        ),
      ).toBe(true);
    }
    expect(zip.equals(installFiles(manifest)["install/titrebook.zip"] as Buffer)).toBe(true);
    // read by our own reader of zip files too, which is not the library that wrote it
    expect(readDirectory(new Uint8Array(zip)).entries.map(({ name }) => name)).toEqual(
      Object.keys(inside),
    );
  });
});
