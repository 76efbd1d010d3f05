/** The fuel as a row of the logbook, and what it is worked out from: what is not complete is left out. */
import { type Exact, exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { neutralisedWord } from "../../core/titration/neutralised";
import { type FuelRecord, notWashed } from "../../workbook/record/fuel-record";
import type { NumberFigures } from "../fields/number-figures";
import { waterFound } from "../water/found";
import { sheetDay } from "../widgets/day";
import type { Draft } from "./draft";
import type { NumberFieldId } from "./fields";
import { litresIn } from "./of-batch";

type Figures = NumberFigures<NumberFieldId>;

/** As a cell will hold it. */
const held = (value: Exact): Exact => exact(value.toNumber());

function acidOf(figures: Figures): FuelRecord["acid"] {
  const value = (field: NumberFieldId): Exact | undefined => figures.value(field);
  const titres = (["acidTitre1", "acidTitre2", "acidTitre3"] as const).flatMap((field) => {
    const titre = value(field);
    return titre ? [held(titre)] : [];
  });
  const [mass, molarity] = [value("acidMass"), value("acidMolarity")];
  if (titres.length === 0 || !mass || !molarity) return undefined;
  return {
    titres,
    blank: value("acidBlank") ?? neutralisedWord,
    mass,
    molarity,
    titreStep: value("titreStep"),
    massStep: value("massStep"),
    percent: value("acidPercent"),
  };
}

function soapOf({ picked }: Draft, figures: Figures): FuelRecord["soap"] {
  const [titre, mass, molarity] = (["soapTitre", "soapMass", "soapMolarity"] as const).map(
    (field) => figures.value(field),
  );
  if (!titre || !mass || !molarity) return undefined;
  return {
    base: picked.base,
    freeBase: figures.value("freeBaseTitre"),
    titre,
    blank: figures.value("soapBlank") ?? neutralisedWord,
    mass,
    molarity,
    titreStep: figures.value("titreStep"),
    percent: figures.value("soapPercent"),
  };
}

export function recordOf(draft: Draft, figures: Figures, today: string): FuelRecord {
  const { picked, words } = draft;
  const water = waterFound(picked.waterBy, figures);
  const often = figures.value("washes");
  const made = figures.value("litres");
  return {
    date: sheetDay(today),
    batch: batchValue(words.batch),
    washes:
      picked.washed === "no" ? notWashed : (often ?? (picked.washed === "yes" ? "yes" : undefined)),
    acid: acidOf(figures),
    soap: soapOf(draft, figures),
    water: water === undefined || isProblem(water) ? undefined : water,
    trial: picked.trial,
    litres: made && held(made.times(litresIn(picked.madeIn))),
    note: words.note.trim(),
  };
}

/** A batch called 118 is a number in `Batches`: the same here, so that the two find each other. */
const batchValue = (words: string): string | number => {
  const name = words.trim();
  return /^[1-9]\d{0,8}$/.test(name) ? Number(name) : name;
};
