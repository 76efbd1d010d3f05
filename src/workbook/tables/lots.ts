/** The `Lots` table: one row for each drum of oil, and what its last titration says. */
import { batchesName, blendsName, sought } from "./batch-cells";
import { calculated, cellOf, type Column, emptyUntilBegun, type TableShape, typed } from "./column";
import { ofLastTitration } from "./last-titration";
import { worthHeading } from "./titration-cells";

export const lotsName = "Lots";
const own = cellOf(lotsName, "Lot");

export const litresLeft = "Litres left";

const sumOf = (from: string, by: string): string =>
  `SUMIFS(${from}[Oil kg],${from}[${by}],${sought(own)})`;
const taken = `${sumOf(batchesName, "Lots")}+${sumOf(blendsName, "Lot")}`;
/** Of its own kind of oil, or of one not named while it is not titrated. */
const density = `IFERROR(TITRE.OILMASS(1,"l",${ofLastTitration("Oil", own)}),TITRE.OILMASS(1,"l"))`;

export interface LotsGiven {
  readonly guidance: string;
  /** Where the oil came from. */
  readonly source: Column;
}

export const lotsTable = ({ guidance, source }: LotsGiven): TableShape => ({
  name: lotsName,
  title: "Lots of oil",
  guidance,
  columns: emptyUntilBegun(lotsName, [
    typed("Lot", 14, "The lot of oil, as it is marked on its drum and in Titrations.", {
      isEssential: true,
    }),
    source,
    typed("Collected", 12, "Day it was collected or made.", { format: "yyyy-mm-dd" }),
    typed("Litres", 10, "How much there was, L.", { format: "0" }),
    calculated(
      litresLeft,
      "0",
      "Litres less what the batches of this lot took, at 20 C.",
      `IF(ISNUMBER(${cellOf(lotsName, "Litres")}),${cellOf(lotsName, "Litres")}-(${taken})/${density},"")`,
    ),
    calculated(
      "Titrations",
      "0",
      "Rows of this lot in Titrations.",
      `SUMPRODUCT((Titrations[Lot]=${own})*1)`,
    ),
    calculated(
      "Acid value mg KOH/g",
      "0.00",
      "From the lot's last titration.",
      ofLastTitration("Acid value mg KOH/g", own),
    ),
    calculated(
      "FFA %",
      "0.00",
      "The same acid as percent oleic, for display.",
      `TITRE.FFAFROMACIDVALUE(${cellOf(lotsName, "Acid value mg KOH/g")})`,
    ),
    calculated(
      worthHeading,
      "General",
      "What that titration says of it: good, usable, near zero or not yet, and why.",
      ofLastTitration(worthHeading, own),
      40,
    ),
    typed("Note", 36, "Anything else."),
  ]),
});
