/** What is written down of a titration. */
import { column, type Column, sampleRole, strengthRole, when } from "./columns";
import type { Habit } from "./habit";

function ffaColumn({ ffaIn, digits }: Habit): Column {
  if (ffaIn === "fraction")
    return column("ffa", "FFA fraction", "ffa", "fraction", digits.acid + 2, "0.0000");
  if (ffaIn === "percent format") return column("ffa", "FFA", "ffa", "%", digits.acid + 2, "0.00%");
  return column("ffa", "FFA %", "ffa", "%", digits.acid, "0.00");
}

export function titrationColumns(habit: Habit): Column[] {
  const { titrant, sample, titres, reads } = habit;
  const strength = strengthRole(habit);
  const portion = sampleRole(habit);
  const burette = titrant.basePlace === "heading" ? `${titrant.base} titre` : "Titre";
  const hasBlank = ["column", "two columns", "once a day", "word", "zero"].includes(habit.blank);
  return [
    ...when(titrant.basePlace === "column", column("titrantBase", "In burette", "titrantBase")),
    ...when(
      titrant.place === "column",
      column("strength", strength.heading, strength.role, strength.unit, 4),
    ),
    ...when(
      sample.place === "column" && !sample.isOwn,
      column("sample", portion.heading, portion.role, portion.unit),
    ),
    ...Array.from({ length: reads === "titres" ? titres : 0 }, (_, at) => [
      ...when(
        sample.isOwn,
        column(`sample ${at + 1}`, `Sample ${String(at + 1)} g`, "sampleMass", "g"),
      ),
      column(
        `titre ${at + 1}`,
        `${burette} ${titres > 1 ? `${String(at + 1)} ` : ""}mL`,
        "titre",
        "mL",
      ),
    ]).flat(),
    ...when(
      hasBlank,
      column("blank", habit.blank === "two columns" ? "Blank 1 mL" : "Blank mL", "blank", "mL"),
    ),
    ...when(habit.blank === "two columns", column("blank 2", "Blank 2 mL", "blank", "mL")),
    ...when(
      habit.hasMean || reads === "mean",
      column(
        "mean",
        `${burette === "Titre" ? "" : `${titrant.base} `}mean titre mL`,
        "meanTitre",
        "mL",
        2,
        "0.00",
      ),
    ),
    ...when(
      habit.hasNet || reads === "net",
      column(
        "net",
        `${burette === "Titre" ? "" : `${titrant.base} `}net titre mL`,
        "correctedTitre",
        "mL",
        2,
        "0.00",
      ),
    ),
    ...when(
      habit.hasAcidValue,
      column(
        "acidValue",
        "Acid value mg KOH/g",
        "acidValue",
        "mg KOH/g",
        habit.digits.acid,
        "0.00",
      ),
    ),
    ...when(habit.hasFfa, ffaColumn(habit)),
    ...when(
      habit.density.place === "column",
      column("density", "Density kg/L", "density", "kg/L", 3),
    ),
  ];
}
