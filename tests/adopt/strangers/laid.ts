/** What a layout is given to lay out, and what it gives: pages, and the truth about their columns. */
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { Chance } from "../habits/chance";
import type { Column, UnitStyle } from "./columns";
import type { Row } from "./figures";
import type { Page } from "./page";
import type { Language } from "./words/role-words";
import type { Hand, Written } from "./written";

export interface Truth {
  readonly sheet: string;
  readonly headingRow: number;
  readonly column: number;
  /** The headings stand in a column, so that `column` is a row and `headingRow` a column. */
  readonly isAcross: boolean;
  readonly heading: string;
  readonly roles: readonly RoleId[];
  /** The unit that is written, as the product names it. */
  readonly unit: string | undefined;
  readonly isNonsense?: true;
}

/** What a layout is given to lay out. */
export interface Content {
  readonly chance: Chance;
  readonly language: Language;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly hand: Hand;
  readonly style: UnitStyle;
  readonly cell: (column: Column, row: Row) => Written;
  readonly heading: (column: Column) => string;
}

export interface Laid {
  readonly pages: readonly (readonly [sheet: string, page: Page])[];
  readonly truth: readonly Truth[];
}
