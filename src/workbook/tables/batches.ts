/**
 * The `Batches` table: one row for each batch. The acid value comes by reference from the lot's last
 * titration up to the batch's day, so that it follows when a reading is put right.
 */
import { offeredUnitNames, offeredUnits } from "../../core/quantity/units";
import { type BatchRecord, lotsWords } from "../record/batch-record";
import {
  acidValueHeading,
  alone,
  asIfPure,
  batchesName,
  brought,
  halfWidthHeading,
  type OfLots,
  one,
  unlessHeldBack,
  withBlends,
  worthColumn,
} from "./batch-cells";
import {
  baseChoices,
  calculated,
  type Column,
  emptyUntilBegun,
  type RecordTable,
  typed,
} from "./column";
import { ofBlends, secondLot } from "./batch-lots";
import { wentColumns } from "./went";

const table = (by: OfLots, more: readonly Column<BatchRecord>[]): RecordTable<BatchRecord> => ({
  name: batchesName,
  title: "Batches",
  guidance:
    "One row for each batch. The acid value comes from the lot's last titration up to the batch's day.",
  what: "batch",
  tellingWords: "same date, same number, same lots, same amount",
  columns: emptyUntilBegun(batchesName, [
    typed("Date", 12, "Day of the batch.", {
      format: "yyyy-mm-dd",
      of: ({ date }) => date,
      tells: true,
    }),
    typed("Batch", 10, "The batch's own number.", { of: ({ batch }) => batch, tells: true }),
    typed(
      "Lots",
      16,
      "The lot of oil, as in Titrations. Of several lots any name: each has a row in Blends.",
      {
        of: ({ lots: [first, ...others] }) =>
          by === alone || others.length === 0 ? first?.lot : lotsWords([first, ...others]),
        tells: true,
        isEssential: true,
      },
    ),
    typed("Amount", 10, "How much oil, in the unit beside it.", {
      format: "0.0",
      of: ({ amount }) => amount,
      tells: true,
      isEssential: true,
    }),
    typed("Unit", 9, `${offeredUnitNames}.`, {
      choices: offeredUnits,
      of: ({ unit }) => unit,
      tells: true,
      isEssential: true,
    }),
    calculated(
      "Oil kg",
      "0.00",
      "Kilograms of oil, from a volume at the temperature under Oil temperature C.",
      by.oilKilograms,
    ),
    calculated(
      acidValueHeading,
      "0.00",
      "From the lot's last titration up to that day; of several lots, by their mass.",
      by.acidValue,
    ),
    {
      ...calculated(
        halfWidthHeading,
        "0.00",
        "Half the width of its 95 % interval, from the titration's own ±; of several lots by the law of propagation.",
        by.halfWidth,
      ),
      mayLack: true,
    },
    typed("Base", 10, "What the lye is.", { choices: baseChoices, of: ({ base }) => base }),
    typed("Lye lot", 10, "The lot of lye, from its label.", { of: ({ lyeLot }) => lyeLot }),
    typed("Assay %", 9, "How much of the lye is base, in percent: 90, not 0.90.", {
      format: "0.0",
      of: ({ assay }) => assay,
    }),
    typed("Charge %", 9, "Pure base for the reaction, as percent of the oil's mass.", {
      format: "0.000",
      of: ({ charge }) => charge,
    }),
    calculated(
      "Catalyst g",
      "0",
      "Lye to weigh out: the acid part and the reaction part together. None from readings that are apart, unless the note says: Used all the same.",
      unlessHeldBack(
        `TITRE.CATALYST(${one("Oil kg")},${one(acidValueHeading)},${one("Base")},${one("Assay %")},${one("Charge %")},${one("Allowed FFA %")})`,
      ),
    ),
    {
      ...calculated(
        "± catalyst g",
        "0",
        "Half the width of its 95 % interval: the acid part carries the doubt of the titration.",
        `IF(ISNUMBER(${one("Catalyst g")}),TITRE.NEUTRALISER(${one("Oil kg")},${one(halfWidthHeading)},${one("Base")},${one("Assay %")}),IF(ISTEXT(${one("Catalyst g")}),"",NA()))`,
      ),
      mayLack: true,
    },
    calculated(
      "Methanol L",
      "0.0",
      "At 20 C, to the triglyceride left after the acid, by the ratio under Methanol ratio.",
      `TITRE.METHANOL(${one("Oil kg")},${one("Methanol ratio")},${one(acidValueHeading)},${by.oil})`,
    ),
    calculated(
      worthColumn,
      "General",
      "What the lot's titration says under Worth: good, usable, near zero or not yet, and why.",
      // without an add-in the acid value is an error, and its worth says why; #N/A is a lot not titrated yet
      `IF(ISNA(${one(acidValueHeading)}),"",${by.worth})`,
      40,
    ),
    calculated(
      "Route",
      "General",
      "Which way this lot can be processed.",
      `TITRE.ROUTE(${one(acidValueHeading)},${one("Water %")},${one("Allowed FFA %")})`,
      60,
    ),
    typed("Weighed g", 10, "Lye that was in fact weighed out, g.", { format: "0" }),
    typed("Litres made", 10, "Biodiesel drawn off, L.", { format: "0.0" }),
    typed("Note", 40, "Anything else.", { of: ({ note }) => note }),
    typed(
      "Methanol ratio",
      10,
      "Moles of methanol to one of triglyceride. Left empty: 6 (commonly cited).",
      { format: "0.00", of: ({ ratio }) => ratio },
    ),
    typed("Allowed FFA %", 10, "Above this no dose is given. Left empty: 5 (commonly cited).", {
      format: "0.0",
      of: ({ limitFfa }) => limitFfa,
    }),
    typed("Oil temperature C", 13, "Temperature at which a volume was taken. Left empty: 20 C.", {
      format: "0.0",
      of: ({ temperature }) => temperature,
    }),
    typed(
      "Titrant lye",
      20,
      "Left empty, or: the titrant was made of this very lye and taken as pure.",
      {
        choices: [asIfPure],
        of: ({ isTitrantAsIfPure }) => (isTitrantAsIfPure ? asIfPure : undefined),
      },
    ),
    calculated(
      "Methanol to add L",
      "0.0",
      "Methanol less what a methoxide solution brings with it.",
      `MAX(0,${one("Methanol L")}-${brought})`,
    ),
    typed("Water %", 9, "Water in the oil, percent of its mass. Left empty: not measured.", {
      format: "0.00##",
      of: ({ water }) => water,
    }),
    ...more,
    ...wentColumns(by.oil),
  ]),
});

/** A row for each batch; several lots stand in `Blends`. */
export const batches = table(withBlends, ofBlends);
/** Where the workbook has no table `Blends`: one lot or two. */
export const batchesAlone = table(alone, secondLot);
