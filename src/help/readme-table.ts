/** The function table of the README, made from the catalogue. */
import type { WorksheetFunction } from "../functions/define";
import { signature } from "./function-page";

const cell = (raw: string): string => raw.replaceAll("|", "\\|");

export const readmeTable = (catalogue: readonly WorksheetFunction[]): string =>
  [
    "| function | gives | in |",
    "| --- | --- | --- |",
    ...catalogue.map(
      (entry) => `| \`${signature(entry)}\` | ${cell(entry.summary)} | ${cell(entry.result)} |`,
    ),
  ].join("\n");

const startMark = "<!-- functions: made by `npm run docs` -->";
const endMark = "<!-- end of functions -->";

/** The README with its table made anew. Throws when the marks are missing. */
export function withTable(readme: string, catalogue: readonly WorksheetFunction[]): string {
  const start = readme.indexOf(startMark);
  const end = readme.indexOf(endMark);
  if (start < 0 || end < start) throw new Error("README.md has lost the marks around its table");
  const head = readme.slice(0, start + startMark.length);
  return `${head}\n\n${readmeTable(catalogue)}\n\n${readme.slice(end)}`;
}
