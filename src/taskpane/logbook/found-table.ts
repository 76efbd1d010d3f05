/** A table of the workbook, as it was read and as it was understood. */
import { type LogbookMapping, mappingFrom } from "../../adopt/recognising/mapping";
import type { TableGuess } from "../../adopt/recognising/recognise";
import type { SheetCells } from "../../adopt/recognising/sheet-cells";

/** One table of the workbook: what it was guessed to be, and what was agreed. */
export interface FoundTable {
  readonly guess: TableGuess;
  readonly cells: SheetCells;
  readonly mapping: LogbookMapping;
  /** A person has seen the mapping and said that it is right. */
  readonly isAgreed: boolean;
  /** The mapping was agreed to before and stood on a sheet. */
  readonly isRemembered: boolean;
  /** A person said in which row its headings stand. */
  readonly isByHand?: true;
  /** It is read as a sheet under the same headings was, by the name of that sheet. */
  readonly learned?: string;
}

/** A table as it was read, and the mapping that was remembered for it, if any. */
export interface ReadTable {
  readonly guess: TableGuess;
  readonly cells: SheetCells;
  readonly remembered: LogbookMapping | undefined;
  /** One of Titrebook's own tables. */
  readonly isOurs?: true;
  readonly isByHand?: true;
  /** What was agreed under the same headings in another workbook. */
  readonly learned?: { readonly from: string; readonly mapping: LogbookMapping };
}

export const foundTable = ({
  guess,
  cells,
  remembered,
  isByHand,
  learned,
}: ReadTable): FoundTable => ({
  guess,
  cells,
  mapping: remembered ?? learned?.mapping ?? mappingFrom(guess),
  isAgreed: remembered !== undefined,
  isRemembered: remembered !== undefined,
  ...(isByHand ? { isByHand } : {}),
  ...(learned ? { learned: learned.from } : {}),
});
