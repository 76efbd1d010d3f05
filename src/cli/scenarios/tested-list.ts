/** The README's list of what is tested where, from the reports that came back. */
import { checkLines, type Seen } from "../../workbook/checking/lines";
import type { Report } from "../../workbook/checking/report";
import { type Untested, untested } from "./untested";

const platforms: Readonly<Record<string, string>> = {
  PC: "Windows",
  Mac: "the Mac",
  OfficeOnline: "the web",
};

const isProved = ({ lines }: Untested, seen: readonly Seen[]): boolean =>
  lines.length > 0 &&
  lines.every((id) => seen.some((each) => each.id === id && each.colour === "green"));

const nameOf = ({ id }: Seen): string => checkLines.find((line) => line.id === id)?.name ?? id;

const listed = (of: readonly Seen[]): string[] =>
  of.map((each) => `  - ${nameOf(each)}: ${each.words}`);

function sectionOf({ where, seen }: Report): string[] {
  const of = (colour: Seen["colour"]): Seen[] => seen.filter((each) => each.colour === colour);
  const head = `Excel ${where.program} on ${platforms[where.platform] ?? where.platform} (${where.engine}), Titrebook ${where.titrebook}, ${where.day}:`;
  const part = (words: string, of: readonly Seen[]): string[] =>
    of.length === 0 ? [] : [`- ${words}:`, ...listed(of)];
  const proved = untested.filter((each) => isProved(each, seen)).map(({ words }) => words);
  const open = untested.filter((each) => !isProved(each, seen));
  return [
    head,
    "",
    `- tested here: ${proved.length === 0 ? "nothing" : proved.join("; ")}.`,
    ...part("not as it must be", of("red")),
    ...part("not seen, or to be looked at", of("amber")),
    `- still untested here: ${open.map(({ words, steps }) => `${words} (step ${steps.join(", ")})`).join("; ")}.`,
    "",
  ];
}

export const testedList = (reports: readonly Report[]): string =>
  reports.flatMap(sectionOf).join("\n");
