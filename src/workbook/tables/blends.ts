/**
 * The `Blends` table: a row for each lot of a batch that is made of several. The batch's acid value and its
 * ± are worked out from these rows, each lot by its mass.
 */
import { limitTo95 } from "../../core/batch/blend";
import { offeredUnitNames, offeredUnits } from "../../core/quantity/units";
import type { BatchLot } from "../record/batch-record";
import {
  acidValueHeading,
  batchesName,
  blendsName,
  blendSums,
  halfWidthHeading,
  sought,
} from "./batch-cells";
import { calculated, cellOf, emptyUntilBegun, type RecordTable, typed } from "./column";
import { ofLastTitration } from "./last-titration";
import { worthHeading } from "./titration-cells";

export interface BlendRow extends BatchLot {
  readonly batch: string;
}

const one = (heading: string): string => cellOf(blendsName, heading);
/** Of the batch's own row; "" where there is none, or nothing in it. */
const ofBatch = (heading: string): string => {
  const cell = `INDEX(${batchesName}[${heading}],MATCH(${sought(one("Batch"))},${batchesName}[Batch],0))`;
  return `IFERROR(IF(ISNUMBER(${cell}),IF(${cell}<>0,${cell},""),""),"")`;
};
const last = (heading: string): string => ofLastTitration(heading, one("Lot"), one("Day"));
const percents = ["Titrant ± %", "Burette ± %"].map((heading) => `N(${last(heading)})^2`).join("+");

export const blends: RecordTable<BlendRow> = {
  name: blendsName,
  title: "Blends",
  guidance:
    "One row for each lot of a batch made of several. Its acid value in Batches comes from here.",
  what: "lot of a blend",
  tellingWords: "same batch, same lot",
  columns: emptyUntilBegun(blendsName, [
    typed("Batch", 10, "The batch's number, as in Batches.", {
      of: ({ batch }) => batch,
      tells: true,
      isEssential: true,
    }),
    typed("Lot", 14, "The lot of oil, as in Titrations.", {
      of: ({ lot }) => lot,
      tells: true,
      isEssential: true,
    }),
    typed("Amount", 10, "How much of this lot, in the unit beside it.", {
      format: "0.00",
      of: ({ amount }) => amount,
      isEssential: true,
    }),
    typed("Unit", 9, `${offeredUnitNames}.`, {
      choices: offeredUnits,
      of: ({ unit }) => unit,
    }),
    calculated("Day", "yyyy-mm-dd", "The batch's day, from Batches.", ofBatch("Date")),
    calculated(
      "Oil kg",
      "0.00",
      "Kilograms of this lot, from a volume at the batch's Oil temperature C.",
      `TITRE.OILMASS(${one("Amount")},${one("Unit")},${last("Oil")},${ofBatch("Oil temperature C")})`,
    ),
    calculated(
      acidValueHeading,
      "0.00",
      "From the lot's last titration up to that day.",
      last(acidValueHeading),
    ),
    {
      ...calculated(
        halfWidthHeading,
        "0.00",
        "Half the width of its 95 % interval, from the titration's own ±.",
        `TITRE.ACIDVALUEFROMFFA(${last("± FFA %")})`,
      ),
      mayLack: true,
    },
    calculated(
      worthHeading,
      "General",
      "What its titration says under Worth.",
      last(worthHeading),
      24,
    ),
    calculated(
      blendSums.acid,
      "0.0",
      "Its acid, as grams of KOH: kilograms by acid value.",
      `${one("Oil kg")}*${one(acidValueHeading)}`,
    ),
    calculated(
      blendSums.shared,
      "0.0",
      "What titrant and burette bring to the ± of that acid: it errs the same way in every lot, and adds up.",
      `N(${one(blendSums.acid)})*${String(limitTo95)}*SQRT(${percents})/100`,
    ),
    {
      ...calculated(
        blendSums.ownSquared,
        "0.0",
        "The rest of that ±, squared: each lot's own, and added as squares.",
        `MAX(0,(${one("Oil kg")}*${one(halfWidthHeading)})^2-${one(blendSums.shared)}^2)`,
      ),
      mayLack: true,
    },
    typed("Note", 30, "Anything else."),
  ]),
};
