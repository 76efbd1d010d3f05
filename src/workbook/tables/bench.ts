/**
 * The table `Bench` on the sheet "My bench": what stays the same from one titration and one batch to the
 * next. A row a setting, so that people can read it and change it there.
 */
import { baseNames } from "../../core/reference/bases";
import { type Limits, limits } from "../../core/reference/limits";
import { amountUnitNamed, offeredUnits } from "../../core/quantity/units";

interface Setting {
  readonly name: string;
  /** Behind the figure; "" for words. */
  readonly unit: string;
  readonly note: string;
}

export interface FigureSetting extends Setting {
  readonly limit: Limits;
  readonly words?: undefined;
}

export interface ChoiceSetting extends Setting {
  readonly words: readonly string[];
  readonly limit?: undefined;
}

/** Any words: a mark on a label. */
export interface TextSetting extends Setting {
  readonly words?: undefined;
  readonly limit?: undefined;
}

export type BenchSetting = FigureSetting | ChoiceSetting | TextSetting;

const figure = (name: string, limit: Limits, unit: string, note: string): FigureSetting => ({
  name,
  unit,
  note,
  limit,
});

const choice = (name: string, words: readonly string[], note: string): ChoiceSetting => ({
  name,
  unit: "",
  note,
  words,
});

const lotOf = (base: string): TextSetting => ({
  name: `Lye lot of ${base}`,
  unit: "",
  note: "As its container is marked.",
});

const assayOf = (base: string, example: string): FigureSetting =>
  figure(`Assay of ${base}`, limits.assay, "%", `From its label: ${example}, not 0.${example}.`);

const chargeOf = (base: string): FigureSetting =>
  figure(
    `Charge of ${base}`,
    limits.chargeGramsPerLitre,
    "see below",
    "What oil without acid would need. Acid comes on top of it.",
  );

export const chargeUnitWords = { "g/L": "g per litre", "%": "% of the oil’s mass" } as const;
export const chargeIsWords = { pure: "pure base", "as weighed": "lye as weighed" } as const;

export const benchSettings = {
  titrantBase: choice("Titrant is made of", baseNames, "What is in the burette."),
  molarity: figure("Titrant strength", limits.molarity, "mol/L", "From its label, or as checked."),
  strengthPercent: figure(
    "Titrant ±",
    limits.plusMinusPercent,
    "%",
    "How far off that strength may be.",
  ),
  titreStep: figure("Burette step", limits.step, "mL", "Smallest difference you read."),
  massStep: figure("Balance step", limits.massStep, "g", "Smallest difference it shows."),
  base: choice("Lye for batches", baseNames, "What batches are usually made with."),
  lotKOH: lotOf("KOH"),
  assayKOH: assayOf("KOH", "90"),
  chargeKOH: chargeOf("KOH"),
  lotNaOH: lotOf("NaOH"),
  assayNaOH: assayOf("NaOH", "99"),
  chargeNaOH: chargeOf("NaOH"),
  lotKOCH3: lotOf("KOCH3"),
  assayKOCH3: assayOf("KOCH3", "32"),
  chargeKOCH3: chargeOf("KOCH3"),
  lotNaOCH3: lotOf("NaOCH3"),
  assayNaOCH3: assayOf("NaOCH3", "30"),
  chargeNaOCH3: chargeOf("NaOCH3"),
  chargeUnit: choice(
    "The charge is given in",
    Object.values(chargeUnitWords),
    "Percent of the oil’s mass, or grams for one litre of it at 20 °C.",
  ),
  chargeIs: choice(
    "The charge is",
    Object.values(chargeIsWords),
    "Pure base, or lye as it is weighed, with its water.",
  ),
  unit: choice(
    "Oil is measured in",
    offeredUnits.map((name) => amountUnitNamed(name)?.shown ?? name),
    "What a batch is usually given in.",
  ),
  amount: figure(
    "Usual batch",
    limits.amount,
    "of these",
    "How much oil you usually take at once.",
  ),
  vessel: figure(
    "Vessel holds",
    limits.amount,
    "of these",
    "Oil and methanol together. A batch that does not fit says so.",
  ),
  ratio: figure("Methanol", limits.molarRatio, "to 1", "Moles to one of triglyceride."),
  limit: figure(
    "Most acid for a batch",
    limits.ffaLimit,
    "% FFA",
    "Above it no dose of lye is shown.",
  ),
} as const satisfies Record<string, BenchSetting>;

export type BenchId = keyof typeof benchSettings;
export const benchIds = Object.keys(benchSettings) as readonly BenchId[];

/** A word, or a figure as plain digits with a point: "0.05". What is left out is not said. */
export type BenchValues = Readonly<Partial<Record<BenchId, string>>>;

export const benchTable = "Bench";
export const benchSheetName = "My bench";
export const benchHeadings = ["Setting", "Value", "Unit", "What it is"] as const;
export const benchHeadingNotes: Readonly<Record<(typeof benchHeadings)[number], string>> = {
  Setting: "What stays the same. The tasks of the pane find a row by this word.",
  Value: "Yours. Leave it empty where you do not know it yet.",
  Unit: "What the figure is in.",
  "What it is": "What the tasks take it for.",
};
