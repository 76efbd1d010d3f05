/** The sheet in a copy that says what the copy is, to somebody who has never heard of us. */
import { cautions } from "../../core/batch/cautions";
import type { PlainCell, PlainRow } from "../../xlsx/patch/plain-sheet";
import { constantsOf } from "./constants";
import type { Facts } from "./facts";
import type { ShareReport, Tally } from "./report";
import { leftWords, reportWords } from "./report-words";
import { version } from "./version";

export interface ReadMeStyles {
  readonly title: number;
  readonly heading: number;
  readonly words: number;
  readonly caution: number;
}

interface About {
  readonly fileName: string;
  readonly day: string | undefined;
  readonly report: ShareReport;
  readonly tally: Tally;
  readonly facts: Facts;
}

/** Widths of its columns, in characters. */
export const readMeWidths = [34, 90, 44];

type Line = readonly [first: string, second?: string, third?: string];
type Styled = { readonly line: Line; readonly look: keyof ReadMeStyles };

const titled = (...line: Line): Styled => ({ line, look: "heading" });
const plain = (...line: Line): Styled => ({ line, look: "words" });

function whatItIs({ report, fileName, day }: About): Styled[] {
  const isPartner = report.kind === "partner";
  return [
    { line: [isPartner ? "Partner copy" : "Numbers-only copy"], look: "title" },
    plain(
      "What this is",
      isPartner
        ? `A workbook kept with Titrebook, with its worksheet functions written in plain formulas: change what is typed, and ${report.sentences + report.left.length === 0 ? "the" : "nearly all"} answers follow in any spreadsheet program.`
        : "A workbook kept with Titrebook, as figures: every formula was taken out, so nothing follows a change.",
    ),
    plain("Made from", fileName),
    ...(day === undefined ? [] : [plain("Made on", day)]),
    plain("Made with", `Titrebook ${version}`),
  ];
}

/** What is typed, by table or by sheet. */
function whatToEdit({ facts, tally, report }: About): Styled[] {
  if (report.kind === "numbers") return [];
  const tables = facts.tables.filter(({ sheet }) => tally.sheets.has(sheet));
  const lines = [
    ...tables.map(({ name, columns }) => {
      const typed = columns.filter(({ formula }) => formula === undefined);
      return plain(`Table ${name}`, typed.map(({ heading }) => heading).join(", "));
    }),
    ...[...tally.inputs].map(([sheet, cells]) => plain(`Sheet ${sheet}`, cells.join(", "))),
  ];
  return lines.length === 0 ? [] : [titled("What to change", "Columns or cells"), ...lines];
}

function whatWasDone({ report }: About): Styled[] {
  return [
    titled("What was done", "Report"),
    ...reportWords(report).map((words) => plain("", words)),
    ...report.left.slice(0, 200).map((left) => plain("", leftWords(left))),
    ...(report.left.length > 200 ? [plain("", "The list is longer than this sheet shows.")] : []),
  ];
}

function constants({ tally, report }: About): Styled[] {
  const used = report.kind === "partner" ? constantsOf(tally.ids) : [];
  if (used.length === 0) return [];
  return [
    titled("Constants in the formulas", "Value", "Source"),
    ...used.map(({ what, value, source }) => plain(what, value, source)),
  ];
}

/** As many lines as the longest text of a row takes; programs differ in what they make of none. */
function heightOf(line: Line): number {
  const lines = line.map((text, column) => {
    const width = readMeWidths[column] ?? 40;
    return Math.ceil(((text ?? "").length * 1.08) / width);
  });
  return 15.5 * Math.max(1, ...lines);
}

const cellsOf = ({ line, look }: Styled, styles: ReadMeStyles): PlainCell[] =>
  line.flatMap((text, column) =>
    text === undefined || text === "" ? [] : [{ column, style: styles[look], text }],
  );

export function readMeRows(about: About, styles: ReadMeStyles): PlainRow[] {
  const lines: (Styled | undefined)[] = [
    ...whatItIs(about),
    undefined,
    ...whatToEdit(about),
    undefined,
    ...whatWasDone(about),
    undefined,
    ...constants(about),
    undefined,
    titled("Safety", "Cautions"),
    ...cautions.map((caution): Styled => ({ line: ["", caution], look: "caution" })),
  ];
  return lines.flatMap((each, row) =>
    each
      ? [
          {
            row,
            cells: cellsOf(each, styles),
            height: each.look === "title" ? 22 : heightOf(each.line),
          },
        ]
      : [],
  );
}
