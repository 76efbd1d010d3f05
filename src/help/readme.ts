/** The part of the README that is made: the cautions. */
import { cautions } from "../core/batch/cautions";

const cautionList = (): string => cautions.map((caution) => `- ${caution}`).join("\n");

/** What stands between a pair of marks is replaced. Throws when the marks are missing. */
function between(readme: string, part: string, made: string): string {
  const startMark = `<!-- ${part}: made by \`npm run docs\` -->`;
  const start = readme.indexOf(startMark);
  const end = readme.indexOf(`<!-- end of ${part} -->`);
  if (start < 0 || end < start) throw new Error(`README.md has lost the marks around its ${part}`);
  return `${readme.slice(0, start + startMark.length)}\n\n${made}\n\n${readme.slice(end)}`;
}

/** The README with its made part made anew. */
export const withMadeParts = (readme: string): string => between(readme, "cautions", cautionList());
