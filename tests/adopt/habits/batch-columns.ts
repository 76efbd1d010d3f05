/** What is written down of a batch. */
import { chargeUnit, column, type Column, when } from "./columns";
import type { Habit } from "./habit";

const gramsDigits = { g: 0, oz: 2, lb: 3, kg: 3 } as const;

export function batchColumns(habit: Habit): Column[] {
  const { base, basePlace, doseUnit, charge, parts, digits } = habit;
  const lye = basePlace === "heading" ? base : "Lye";
  const doseDigits = digits.dose + gramsDigits[doseUnit];
  const format = ["0", "0.0", "0.00", "0.000", "0.0000"][doseDigits] ?? "0";
  const part =
    parts === "for a litre"
      ? { unit: "g/L", digits: 2, format: "0.00" }
      : { unit: doseUnit, digits: doseDigits, format };
  const partHeading = parts === "for a litre" ? "g/L" : doseUnit;
  return [
    column(
      "oil",
      habit.hasUnitColumn ? "Oil" : `Oil ${habit.oilUnit}`,
      "oilAmount",
      habit.hasUnitColumn ? "L" : habit.oilUnit,
      1,
    ),
    ...when(habit.hasUnitColumn, column("unit", "Unit", "amountUnit")),
    ...when(habit.hasOilMass, column("kilograms", "Oil mass kg", "oilMass", "kg", 1, "0.0")),
    ...when(habit.hasTemperature, column("temperature", "Oil temp C", "temperature", "C", 0)),
    ...when(basePlace === "column", column("base", "Which lye", "base")),
    ...when(habit.assayPlace === "column", column("assay", "Assay %", "assay", "%")),
    ...when(
      charge.place === "column",
      column(
        "charge",
        charge.per === "percent format" ? "Base charge" : `Base charge ${charge.per}`,
        "baseCharge",
        chargeUnit(habit),
        3,
        charge.per === "percent format" ? "0.0%" : "General",
      ),
    ),
    ...when(
      parts !== "none",
      column(
        "acid",
        `${lye} for the acid ${partHeading}`,
        "acidDose",
        part.unit,
        part.digits,
        part.format,
      ),
      column(
        "reaction",
        `${lye} for the reaction ${partHeading}`,
        "reactionDose",
        part.unit,
        part.digits,
        part.format,
      ),
    ),
    ...when(
      habit.hasRate,
      column("rate", `${lye} per litre g/L`, "catalystRate", "g/L", 2, "0.00"),
    ),
    column("total", `${lye} to add ${doseUnit}`, "catalyst", doseUnit, doseDigits, format),
    ...when(
      habit.isWeighedWritten,
      column("weighed", `Weighed out ${doseUnit}`, "weighed", doseUnit, doseDigits),
    ),
    ...when(
      habit.extras.methanol !== "none",
      column(
        "methanol",
        `Methanol ${habit.extras.methanol}`,
        "methanol",
        habit.extras.methanol,
        1,
        "0.0",
      ),
    ),
    ...when(habit.extras.notes, column("note", "Notes", "note")),
  ];
}
