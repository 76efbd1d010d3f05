/** What every layout needs: a plain table, and the truth about a column. */
import type { Content, Laid, Truth } from "./laid";
import type { Column } from "./columns";
import type { Row } from "./figures";
import { type Page } from "./page";

export type Layout = (content: Content) => Laid;

export const truthOf = (
  column: Column,
  sheet: string,
  headingRow: number,
  at: number,
  heading: string,
): Truth => ({
  sheet,
  headingRow,
  column: at,
  isAcross: false,
  heading,
  roles: column.roles,
  unit: column.unit,
  ...(column.isNonsense ? { isNonsense: true as const } : {}),
});

/** A plain table; says the truth of each of its columns. */
export function table(
  content: Content,
  page: Page,
  sheet: string,
  top: number,
  left: number,
  columns: readonly Column[] = content.columns,
  rows: readonly Row[] = content.rows,
  gap: (at: number) => number = () => 0,
): { truth: Truth[]; end: number } {
  const truth = columns.map((column, at) => {
    const heading = content.heading(column);
    page.put(top, left + at, heading);
    return truthOf(column, sheet, top, left + at, heading);
  });
  let row = top;
  rows.forEach((each, at) => {
    row += 1 + gap(at);
    columns.forEach((column, place) => {
      const { value, format } = content.cell(column, each);
      page.put(row, left + place, value, format);
    });
  });
  return { truth, end: row + 1 };
}

export const one = (sheet: string, page: Page, truth: readonly Truth[]): Laid => ({
  pages: [[sheet, page]],
  truth,
});

export const isTitration = ({ meaning }: Column): boolean =>
  [
    "number",
    "date",
    "lot",
    "oil",
    "operator",
    "titrantBase",
    "indicator",
    "molarity",
    "strength",
    "sampleMass",
    "sampleVolume",
    "titre",
    "blank",
    "meanTitre",
    "correctedTitre",
    "acidValue",
    "ffa",
    "rough",
    "target",
  ].includes(meaning);
