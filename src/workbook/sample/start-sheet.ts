/** The first sheet of a sample: what it is for and what to do, and the cautions. */
import { cautions } from "../../core/batch/cautions";
import type { BookSheet } from "../../sheet/book";
import { caution, heading, sheetOfSentences, title, words } from "./cells";

export interface Newcomer {
  readonly title: string;
  /** What the workbook is, in a sentence or two. */
  readonly about: string;
  /** What to do, in order. */
  readonly steps: readonly string[];
}

/** True of every workbook that holds formulas of the add-in. */
const withoutAddIn =
  "Without Titrebook, open a partner copy instead: here cells show #NAME?, or figures that no longer follow. If this is a partner copy, read its sheet Read me first.";

export function startSheet({ title: name, about, steps }: Newcomer): BookSheet {
  const rows = [
    [title(name)],
    [words(about)],
    [],
    [heading("What to do")],
    ...steps.map((step, place) => [words(`${String(place + 1)}. ${step}`)]),
    [],
    [heading("To know")],
    [
      words(
        "The pale yellow cells are for you to change; select one and it says what to type. Everything else follows.",
      ),
    ],
    [
      words(
        "#VALUE! means that something is wrong, #N/A that something is not filled in yet. The pane beside the sheet says which.",
      ),
    ],
    [words(withoutAddIn)],
    [],
    [heading("Safety")],
    ...cautions.map((each) => [caution(each)]),
  ];
  return sheetOfSentences("Start here", rows);
}
