/** The lots that are titrated, as the table `Titrations` has them. Reads only. */
import { sharedHalfWidth } from "../../core/batch/blend";
import { type CellContent, type Fault, type Host, isFault } from "../../sheet/port";
import type { BookValue } from "../../sheet/book";
import { byVolumeWord, type Worth, worthOf } from "../record/worth";
import {
  readingHeadings,
  sampleByHeading,
  titrationsName,
  usualHeadings,
} from "../tables/titration-cells";
import { rowsUnder, type Under } from "./headings";
import { readTable } from "./read";

export interface RecordedLot {
  /** As it stands there: a lot may be a number. */
  readonly lot: BookValue;
  readonly stage: string;
  readonly oil: string;
  readonly titrantBase: string;
  /** mg KOH/g; undefined while its cell shows none. */
  readonly acidValue: number | undefined;
  /** % FFA, and half the width of its interval; undefined while their cells show none. */
  readonly ffa: number | undefined;
  readonly halfWidth: number | undefined;
  /** What titrant and burette bring to that, % FFA. */
  readonly shared: number;
  /** What the result is worth; undefined where no verdict stands beside it. */
  readonly worth: Worth | undefined;
  /** What the acid value's cell shows instead of a figure. */
  readonly trouble: string;
  /** The titrant's lye was taken as pure, as the row's note says. */
  readonly isAsIfPure: boolean;
}

const number = (value: CellContent): number | undefined =>
  typeof value === "number" ? value : undefined;
const text = (value: CellContent): string => (typeof value === "string" ? value.trim() : "");
/** Said where the cell shows nothing at all. */
export const noAcidYet = "no acid value yet";
const errorOf = (value: CellContent): string =>
  typeof value === "object" ? value.error : noAcidYet;

/** Written by the titration task where the assay was not known. */
const asIfPureNote = /as if it were pure/i;

const doubtOf = (ffa: number | undefined, halfWidth: number | undefined) =>
  ffa === undefined || halfWidth === undefined ? undefined : { ffa, halfWidth };

/** As the row's own formula under Worth says; a table made before that column has the facts too. */
function worthIn(under: Under): Worth | undefined {
  const isFilled = (heading: string): boolean => (number(under(heading)) ?? 0) > 0;
  const verdict = text(under("Verdict"));
  if (verdict === "") return undefined;
  return worthOf({
    verdict,
    titres: readingHeadings.titres.filter(isFilled).length,
    hasRecord: usualHeadings.every(isFilled),
    doubt: doubtOf(number(under("FFA %")), number(under("± FFA %"))),
    hasTitrantPercent: isFilled("Titrant ± %"),
    isByVolume: text(under(sampleByHeading)).toLowerCase() === byVolumeWord,
  });
}

const flat = (lot: BookValue): string => String(lot).trim().toLowerCase();

const isLater = (under: Under, until: number): boolean => (number(under("Date")) ?? 0) >= until + 1;

/** A row of a day that is yet to come says only that the lot is there. */
const notYetMade = (lot: RecordedLot): RecordedLot => ({
  ...lot,
  acidValue: undefined,
  ffa: undefined,
  halfWidth: undefined,
  worth: undefined,
  trouble: "its titration is dated on a day yet to come",
});

/**
 * The last row of each lot counts, as in the formulas of `Batches`; the latest lot comes first.
 * @param until the batch's day, as a spreadsheet counts days: later rows do not count for it
 * @returns undefined when there is no such table
 */
export async function readLots(
  host: Host,
  until = Infinity,
): Promise<readonly RecordedLot[] | undefined | Fault> {
  const found = await readTable(host, titrationsName);
  if (found === undefined || isFault(found)) return found;
  const { table, values } = found;
  const { headings } = table;
  const lots: RecordedLot[] = [];
  const seen = new Set<string>();
  const latestFirst = rowsUnder(headings, values.slice(1)).reverse();
  const isYetToCome = (under: Under): boolean => isLater(under, until);
  const made = latestFirst.filter((under) => !isYetToCome(under));
  for (const under of [...made, ...latestFirst.filter(isYetToCome)]) {
    const lot = under("Lot");
    if (typeof lot === "object" || String(lot).trim() === "") continue;
    if (seen.has(flat(lot))) continue;
    seen.add(flat(lot));
    const acidValue = under("Acid value mg KOH/g");
    const found: RecordedLot = {
      lot,
      stage: text(under("Stage")),
      oil: text(under("Oil")),
      titrantBase: text(under("Titrant base")),
      acidValue: number(acidValue),
      ffa: number(under("FFA %")),
      halfWidth: number(under("± FFA %")),
      shared: sharedHalfWidth(
        number(under("FFA %")) ?? 0,
        number(under("Titrant ± %")) ?? 0,
        number(under("Burette ± %")) ?? 0,
      ),
      worth: number(acidValue) === undefined ? undefined : worthIn(under),
      trouble: errorOf(acidValue),
      isAsIfPure: asIfPureNote.test(text(under("Note"))),
    };
    lots.push(isYetToCome(under) ? notYetMade(found) : found);
  }
  return lots;
}
