/**
 * The `Batches` table: one row for each batch. The acid value comes by reference from the lot's last
 * titration, so that it follows when a reading is put right.
 */
import { baseChoices, calculated, cellOf, type TableShape, typed } from "./column";

const table = "Batches";
const one = (heading: string): string => cellOf(table, heading);

/** A column of the lot's last row in `Titrations`: a lot titrated again after treatment counts anew. */
const ofLastTitration = (heading: string): string =>
  `LOOKUP(2,1/(Titrations[Lot]=${one("Lots")}),Titrations[${heading}])`;

export const batches: TableShape = {
  name: table,
  title: "Batches",
  guidance: "One row for each batch. The acid value comes from the lot's last titration.",
  columns: [
    typed("Date", 12, "Day of the batch.", { format: "yyyy-mm-dd" }),
    typed("Batch", 10, "The batch's own number."),
    typed(
      "Lots",
      10,
      "The lot of oil, as in Titrations. Titrate a blend and give it a lot of its own.",
    ),
    typed("Amount", 10, "How much oil, in the unit beside it.", { format: "0.0" }),
    typed("Unit", 9, "l, kg, us_gal or uk_gal.", {
      choices: ["l", "kg", "us_gal", "uk_gal", "lb"],
    }),
    calculated(
      "Oil kg",
      "0.00",
      "Kilograms of oil at 20 C.",
      `TITRE.OILMASS(${one("Amount")},${one("Unit")},${ofLastTitration("Oil")})`,
    ),
    calculated(
      "Acid value mg KOH/g",
      "0.00",
      "From the lot's last titration.",
      ofLastTitration("Acid value mg KOH/g"),
    ),
    typed("Base", 10, "What the lye is.", { choices: baseChoices }),
    typed("Lye lot", 10, "The lot of lye, from its label."),
    typed("Assay %", 9, "How much of the lye is base, in percent: 90, not 0.90.", {
      format: "0.0",
    }),
    typed("Charge %", 9, "Pure base for the reaction, as percent of the oil's mass.", {
      format: "0.000",
    }),
    calculated(
      "Catalyst g",
      "0",
      "Lye to weigh out: the acid part and the reaction part together.",
      `TITRE.CATALYST(${one("Oil kg")},${one("Acid value mg KOH/g")},${one("Base")},${one("Assay %")},${one("Charge %")})`,
    ),
    calculated(
      "Methanol L",
      "0.0",
      "Six moles to one of triglyceride, at 20 C.",
      `TITRE.METHANOL(${one("Oil kg")},6,${one("Acid value mg KOH/g")},${ofLastTitration("Oil")})`,
    ),
    calculated(
      "Route",
      "General",
      "Which way this lot can be processed.",
      `TITRE.ROUTE(${one("Acid value mg KOH/g")})`,
      60,
    ),
    typed("Weighed g", 10, "Lye that was in fact weighed out, g.", { format: "0" }),
    typed("Litres made", 10, "Biodiesel drawn off, L.", { format: "0.0" }),
    typed("Note", 40, "Anything else."),
  ],
};
