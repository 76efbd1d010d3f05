/** The parts of the README that are made: the function table, the cautions, how to load the add-in. */
import type { WorksheetFunction } from "../functions/define";
import { cautions } from "../core/batch/cautions";
import { signature } from "./function-page";
import { markdownOf } from "./guide-markdown";
import { developerParts, installParts } from "./guides/install";

const cell = (raw: string): string => raw.replaceAll("|", "\\|");

const functionTable = (catalogue: readonly WorksheetFunction[]): string =>
  [
    "| function | gives | in |",
    "| --- | --- | --- |",
    ...catalogue.map(
      (entry) => `| \`${signature(entry)}\` | ${cell(entry.summary)} | ${cell(entry.result)} |`,
    ),
  ].join("\n");

const cautionList = (): string => cautions.map((caution) => `- ${caution}`).join("\n");

/** What stands between a pair of marks is replaced. Throws when the marks are missing. */
function between(readme: string, part: string, made: string): string {
  const startMark = `<!-- ${part}: made by \`npm run docs\` -->`;
  const start = readme.indexOf(startMark);
  const end = readme.indexOf(`<!-- end of ${part} -->`);
  if (start < 0 || end < start) throw new Error(`README.md has lost the marks around its ${part}`);
  return `${readme.slice(0, start + startMark.length)}\n\n${made}\n\n${readme.slice(end)}`;
}

/** The README with its made parts made anew. */
export function withMadeParts(readme: string, catalogue: readonly WorksheetFunction[]): string {
  const made: Readonly<Record<string, string>> = {
    functions: functionTable(catalogue),
    cautions: cautionList(),
    loading: markdownOf([...developerParts, ...installParts]),
  };
  return Object.entries(made).reduce((text, [part, now]) => between(text, part, now), readme);
}
