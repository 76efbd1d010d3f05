/** The table as the pane shows it: texts, refusals in words, and no more than can be looked over. */
import { shown } from "../../core/exact/rounding";
import { isProblem } from "../../core/problem/problem";
import { limitWords } from "../fields/limit-words";
import type { Gram } from "../../core/quantity/quantity";
import type { Doses } from "../../workbook/what-if/doses";
import { placesFor } from "../../workbook/what-if/format";
import { acrossName, columnHead, columnName } from "../../workbook/what-if/names";
import type { WhatIfQuestion } from "../../workbook/what-if/question";

const mostRowsShown = 30;
const mostColumnsShown = 12;

export interface PreviewCell {
  readonly text: string;
  readonly isRefused: boolean;
}

export interface Preview {
  /** What stands across: "acid value, mg KOH/g". */
  readonly across: string;
  readonly heads: readonly string[];
  readonly rows: readonly { readonly size: string; readonly cells: readonly PreviewCell[] }[];
  /** "The first 30 of 50 sizes are shown; all are written."; "" when all are shown. */
  readonly left: string;
  /** Why a column has no dose, once for each reason. */
  readonly refusals: readonly string[];
}

/** A refusal's own word in its cell; its sentence stands below the table. */
const refusedWord = "above limit";

function leftWords(sizes: number, columns: number): string {
  const parts = [
    ...(sizes > mostRowsShown ? [`${String(mostRowsShown)} of ${String(sizes)} sizes`] : []),
    ...(columns > mostColumnsShown
      ? [`${String(mostColumnsShown)} of ${String(columns)} columns`]
      : []),
  ];
  return parts.length === 0
    ? ""
    : `The first ${parts.join(" and ")} are shown here; all are written.`;
}

export function previewOf(question: WhatIfQuestion, doses: Doses): Preview {
  const all = doses.rows.flat();
  const figures = all.flatMap((each): Gram[] => (isProblem(each) ? [] : [each]));
  const places = placesFor(figures);
  const sizes = question.sizes.map(shown);
  const heads = question.columns.map((column) => columnHead(question.by, column));
  const names = question.columns.map((column) => columnName(question.by, column));
  const refusals = new Set(
    (doses.rows[0] ?? []).flatMap((each, column) =>
      isProblem(each) ? [`${names[column] ?? ""}: ${limitWords(each)}`] : [],
    ),
  );
  return {
    across: acrossName(question),
    heads: heads.slice(0, mostColumnsShown),
    rows: doses.rows.slice(0, mostRowsShown).map((row, index) => ({
      size: sizes[index] ?? "",
      cells: row
        .slice(0, mostColumnsShown)
        .map((dose) =>
          isProblem(dose)
            ? { text: refusedWord, isRefused: true }
            : { text: dose.toFixed(places), isRefused: false },
        ),
    })),
    left: leftWords(question.sizes.length, question.columns.length),
    refusals: [...refusals],
  };
}
