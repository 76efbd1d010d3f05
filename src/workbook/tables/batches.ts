/**
 * The `Batches` table: one row for each batch. The acid value comes by reference from the lot's last
 * titration, so that it follows when a reading is put right.
 */
import { cellOf, type Column, type TableShape } from "./column";

const table = "Batches";
const one = (heading: string): string => cellOf(table, heading);

/** A column of the lot's last row in `Titrations`: a lot titrated again after treatment counts anew. */
const ofLastTitration = (heading: string): string =>
  `LOOKUP(2,1/(Titrations[Lot]=${one("Lots")}),Titrations[${heading}])`;

const input = (
  heading: string,
  width: number,
  note: string,
  more: Pick<Column, "format" | "choices"> = {},
): Column => ({ heading, kind: "input", width, note, ...more });

const result = (
  heading: string,
  format: string,
  note: string,
  formula: string,
  width = 12,
): Column => ({
  heading,
  kind: "calculated",
  format,
  width,
  note,
  formula: `=${formula}`,
});

export const batches: TableShape = {
  name: table,
  columns: [
    input("Date", 12, "Day of the batch.", { format: "yyyy-mm-dd" }),
    input("Batch", 10, "The batch's own number."),
    input(
      "Lots",
      10,
      "The lot of oil, as in Titrations. Titrate a blend and give it a lot of its own.",
    ),
    input("Amount", 10, "How much oil, in the unit beside it.", { format: "0.0" }),
    input("Unit", 9, "l, kg, us_gal or uk_gal.", {
      choices: ["l", "kg", "us_gal", "uk_gal", "lb"],
    }),
    result(
      "Oil kg",
      "0.00",
      "Kilograms of oil at 20 C.",
      `TITRE.OILMASS(${one("Amount")},${one("Unit")},${ofLastTitration("Oil")})`,
    ),
    result(
      "Acid value mg KOH/g",
      "0.00",
      "From the lot's last titration.",
      ofLastTitration("Acid value mg KOH/g"),
    ),
    input("Base", 10, "What the lye is.", { choices: ["KOH", "NaOH", "KOCH3", "NaOCH3"] }),
    input("Lye lot", 10, "The lot of lye, from its label."),
    input("Assay %", 9, "How much of the lye is base, in percent: 90, not 0.90.", {
      format: "0.0",
    }),
    input("Charge %", 9, "Pure base for the reaction, as percent of the oil's mass.", {
      format: "0.000",
    }),
    result(
      "Catalyst g",
      "0",
      "Lye to weigh out: the acid part and the reaction part together.",
      `TITRE.CATALYST(${one("Oil kg")},${one("Acid value mg KOH/g")},${one("Base")},${one("Assay %")},${one("Charge %")})`,
    ),
    result(
      "Methanol L",
      "0.0",
      "Six moles to one of triglyceride, at 20 C.",
      `TITRE.METHANOL(${one("Oil kg")},6,${one("Acid value mg KOH/g")},${ofLastTitration("Oil")})`,
    ),
    result(
      "Route",
      "General",
      "Which way this lot can be processed.",
      `TITRE.ROUTE(${one("Acid value mg KOH/g")})`,
      60,
    ),
    input("Weighed g", 10, "Lye that was in fact weighed out, g.", { format: "0" }),
    input("Litres made", 10, "Biodiesel drawn off, L.", { format: "0.0" }),
    input("Note", 40, "Anything else."),
  ],
};
