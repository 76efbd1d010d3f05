/** The titrants that were made and checked, as the table `Titrants` has them. Reads only. */
import { type CellContent, type Fault, type Host, isFault } from "../../sheet/port";
import { serialsEnd } from "../../sheet/serial-days";
import type { TitrantCheck } from "../over-time/titrant-history";
import { titrants } from "../tables/titrants";
import { rowsUnder } from "./headings";
import { readTable } from "./read";

const number = (value: CellContent): number | undefined =>
  typeof value === "number" ? value : undefined;
/** A day of the calendar; a date typed as text is none. */
const day = (value: CellContent): number | undefined =>
  typeof value === "number" && value >= 1 && value < serialsEnd ? value : undefined;
const text = (value: CellContent): string =>
  typeof value === "object" ? "" : String(value).trim();

/**
 * Rows that say which titrant, and how strong; a row without a date is among them.
 * @returns undefined when there is no such table
 */
export async function readTitrants(
  host: Host,
): Promise<readonly TitrantCheck[] | undefined | Fault> {
  const found = await readTable(host, titrants.name);
  if (found === undefined || isFault(found)) return found;
  const { headings } = found.table;
  return rowsUnder(headings, found.values.slice(1)).flatMap((under): TitrantCheck[] => {
    const strength = number(under("Strength mol/L"));
    const titrant = text(under("Titrant"));
    if (titrant === "" || strength === undefined || strength <= 0) return [];
    return [
      {
        titrant,
        base: text(under("Base")),
        howKnown: text(under("How known")),
        strength,
        percent: number(under("± %")),
        day: day(under("Date")),
      },
    ];
  });
}
