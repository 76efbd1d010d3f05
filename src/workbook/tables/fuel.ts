/** The `Fuel` table: one row each time the fuel of a batch was looked at. */
import { methanolTrial, trialAnswers, trialMix } from "../../core/batch/went";
import { neutralisedWord } from "../../core/titration/neutralised";
import { type FuelRecord, notWashed } from "../record/fuel-record";
import {
  baseChoices,
  calculated,
  type Column,
  emptyUntilBegun,
  type RecordTable,
  typed,
} from "./column";
import {
  acidDoubt,
  acidTitreHeadings,
  acidValue,
  acidVerdict,
  freeBase,
  fuelName,
  metal,
  metalDoubt,
  metalVerdict,
  one,
  soap,
} from "./fuel-cells";

type More = Omit<Parameters<typeof typed<FuelRecord>>[3], never>;

const figure = (
  heading: string,
  format: string,
  note: string,
  of: NonNullable<Column<FuelRecord>["of"]>,
  more: More = {},
): Column<FuelRecord> => typed(heading, 10, note, { format, of, ...more });

/** Nothing is worked out of what was not titrated. */
const ifThere = (heading: string, formula: string): string =>
  `IF(${one(heading)}="","",${formula})`;
const ofAcid = (formula: string): string => ifThere("Acid titre 1 mL", formula);
const ofSoap = (formula: string): string => ifThere("Soap titre mL", formula);
const mayLack = (column: Column<unknown>): Column<unknown> => ({ ...column, mayLack: true });

export const fuel: RecordTable<FuelRecord> = {
  name: fuelName,
  title: "Fuel",
  guidance:
    "One row each time the fuel of a batch is looked at. Type the readings; the columns of results work themselves out.",
  what: "fuel",
  tellingWords: "same date, same batch, same readings",
  columns: emptyUntilBegun(fuelName, [
    figure("Date", "yyyy-mm-dd", "Day it was looked at.", ({ date }) => date, { tells: true }),
    typed("Batch", 10, "The batch, as in Batches.", {
      of: ({ batch }) => batch,
      tells: true,
      isEssential: true,
    }),
    typed("Washes", 9, `How often it was washed, or the word ${notWashed}.`, {
      of: ({ washes }) => washes,
      tells: true,
    }),
    ...acidTitreHeadings.map((heading, place) =>
      figure(
        heading,
        "0.00",
        "Alkali that the fuel's acid took, mL.",
        ({ acid }) => acid?.titres[place],
        { tells: true },
      ),
    ),
    figure(
      "Acid blank mL",
      "0.00",
      `Solvent alone, mL; or the word ${neutralisedWord}.`,
      ({ acid }) => acid?.blank,
    ),
    figure("Acid mass g", "0.00", "Fuel in each, g: 20 (EN 14104).", ({ acid }) => acid?.mass),
    figure("Acid mol/L", "0.0000", "Strength of that alkali, mol/L.", ({ acid }) => acid?.molarity),
    figure(
      "Acid read to mL",
      "0.00",
      "Smallest difference read on that burette, mL.",
      ({ acid }) => acid?.titreStep,
    ),
    figure(
      "Weighed to g",
      "0.00",
      "Smallest difference the balance shows, g.",
      ({ acid }) => acid?.massStep,
    ),
    figure(
      "Acid titrant ± %",
      "0.0",
      "How far off that strength may be, %.",
      ({ acid }) => acid?.percent,
    ),
    typed("Base", 9, "What the batch was made with.", {
      choices: baseChoices,
      of: (record) => record.soap?.base,
    }),
    figure(
      "Free base titre mL",
      "0.00",
      "Acid until phenolphthalein is colourless, mL. Left empty: it was so from the start.",
      (record) => record.soap?.freeBase,
      { tells: true },
    ),
    figure(
      "Soap titre mL",
      "0.00",
      "Acid from there until bromophenol blue is yellow, mL.",
      (record) => record.soap?.titre,
      { tells: true },
    ),
    figure(
      "Soap blank mL",
      "0.00",
      `Solvent alone to the same yellow, mL; or the word ${neutralisedWord}.`,
      (record) => record.soap?.blank,
    ),
    figure("Soap mass g", "0.00", "Fuel in that flask, g.", (record) => record.soap?.mass),
    figure(
      "HCl mol/L",
      "0.0000",
      "Strength of the hydrochloric acid: 0.01, not 0.1.",
      (record) => record.soap?.molarity,
    ),
    figure(
      "HCl read to mL",
      "0.00",
      "Smallest difference read on it, mL.",
      (record) => record.soap?.titreStep,
    ),
    figure(
      "HCl ± %",
      "0.0",
      "How far off its strength may be, %.",
      (record) => record.soap?.percent,
    ),
    calculated("Acid value mg KOH/g", "0.000", "Of the fuel.", ofAcid(acidValue)),
    mayLack(calculated("± acid value", "0.000", "Half its 95 % interval.", ofAcid(acidDoubt))),
    calculated("Acid verdict", "General", "Against 0.50 (EN 14214, ASTM D6751).", acidVerdict, 40),
    calculated("Soap mg/kg", "0.0", "As oleate of the base's metal.", ofSoap(soap)),
    calculated("Free base mg/kg", "0.0", "As the base.", ofSoap(freeBase)),
    calculated("Metal mg/kg", "0.00", "Sodium or potassium in soap and base.", ofSoap(metal)),
    mayLack(
      calculated(
        "± metal",
        "0.00",
        "By reading and titrant alone: one titration.",
        ofSoap(metalDoubt),
      ),
    ),
    calculated(
      "Metal verdict",
      "General",
      "Against 5 mg/kg (EN 14214, ASTM D6751).",
      metalVerdict,
      40,
    ),
    figure("Water %", "0.000", "Water in the fuel, % of its mass.", ({ water }) => water),
    typed(methanolTrial, 12, `${trialMix} at 20 C: no measurement.`, {
      choices: trialAnswers,
      of: ({ trial }) => (trial === "" ? undefined : trial),
    }),
    figure("Litres", "0.0", "Fuel that this speaks for, L.", ({ litres }) => litres),
    typed("Note", 40, "Anything else.", { of: ({ note }) => note }),
  ]),
};
