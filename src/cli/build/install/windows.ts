/**
 * For Windows: the manifest copied to a folder of the user's own, and one value under the user's own
 * registry key that names it. Nobody need be an administrator, and no share is made. From the maker's
 * own tool for developers (office-addin-dev-settings); not tried in Excel.
 *
 * Rules of these texts, which the tests hold: variables stand in quotes alone, since a path may hold
 * spaces, & and brackets; programs are named with their folder, since cmd looks beside the script first;
 * no brackets around commands; lines end as cmd needs them to find its labels.
 */
import type { AddIn } from "../../../xlsx";

/** As cmd reads it. */
const script = (...lines: readonly string[]): string => lines.map((line) => `${line}\r\n`).join("");

const head = (what: string, { id }: AddIn): string[] => [
  "@echo off",
  `rem ${what}`,
  "setlocal DisableDelayedExpansion",
  `set "id=${id}"`,
  'set "key=HKCU\\Software\\Microsoft\\Office\\16.0\\Wef\\Developer"',
  'set "folder=%LOCALAPPDATA%\\Titrebook"',
  'set "reg=%SystemRoot%\\System32\\reg.exe"',
];

const end = ["pause", "exit /b 0"];
const failed = (...says: readonly string[]): string[] => [
  ":failed",
  ...says.map((line) => `echo ${line}`),
  "pause",
  "exit /b 1",
];

export const installOnWindows = (addIn: AddIn): string =>
  script(
    ...head("Makes Titrebook known to Excel, for this user alone.", addIn),
    'if not exist "%~dp0manifest.xml" goto alone',
    'if not exist "%folder%" mkdir "%folder%"',
    'copy /y "%~dp0manifest.xml" "%folder%\\manifest.xml" >nul || goto failed',
    '"%reg%" add "%key%" /v "%id%" /t REG_SZ /d "%folder%\\manifest.xml" /f >nul || goto failed',
    "echo Done. Close Excel if it is open, then open start.xlsx from this folder.",
    "echo remove-windows.cmd takes it out again.",
    ...end,
    ":alone",
    "echo manifest.xml is not beside this script.",
    "echo Unpack the whole zip file first: right-click it, Extract All.",
    "pause",
    "exit /b 1",
    ...failed(
      "It could not be written. Excel is as it was.",
      "On a machine of an organisation, ask whoever looks after it.",
    ),
  );

export const removeFromWindows = (addIn: AddIn): string =>
  script(
    ...head("Takes Titrebook out of Excel, for this user alone.", addIn),
    '"%reg%" query "%key%" /v "%id%" >nul 2>nul || goto gone',
    '"%reg%" delete "%key%" /v "%id%" /f >nul || goto failed',
    ":gone",
    'if exist "%folder%\\manifest.xml" del "%folder%\\manifest.xml"',
    'if exist "%folder%" rmdir "%folder%" 2>nul',
    "echo Titrebook is taken out. Close Excel if it is open.",
    "echo Your workbooks keep their figures.",
    ...end,
    ...failed("It could not be taken out."),
  );
