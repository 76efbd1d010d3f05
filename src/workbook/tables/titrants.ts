/**
 * The `Titrants` table: one row for each day a titrant was made or checked. Strength and ± are worked out
 * of KHP readings where there are any, and are what was stated where there are none.
 */
import { type TitrantRecord, waysKnown } from "../record/titrant-record";
import {
  baseChoices,
  calculated,
  cellOf,
  cellsOf,
  type Column,
  emptyUntilBegun,
  type RecordTable,
  typed,
} from "./column";

const table = "Titrants";
const one = (heading: string): string => cellOf(table, heading);

/** KHP titrations that a row holds. */
const mostPhthalate = 3;

const masses = cellsOf(table, "KHP 1 g", "KHP 3 g");
const titres = cellsOf(table, "Titre 1 mL", "Titre 3 mL");
const blank = one("Blank mL");

/** An empty cell stays empty: a formula would make a 0 of it. */
const stated = (heading: string): string => `IF(${one(heading)}="","",${one(heading)})`;

const numbered = (
  column: (number: number) => Column<TitrantRecord>,
): readonly Column<TitrantRecord>[] =>
  Array.from({ length: mostPhthalate }, (_, place) => column(place + 1));

export const titrants: RecordTable<TitrantRecord> = {
  name: table,
  title: "Titrants",
  guidance:
    "One row each time a titrant is made or checked. A fresh bottle gets a name of its own: a line is drawn through all rows of one name.",
  what: "titrant",
  tellingWords: "same date, same titrant, same figures",
  columns: emptyUntilBegun(table, [
    typed("Date", 12, "Day it was made or checked.", {
      format: "yyyy-mm-dd",
      of: ({ date }) => date,
      tells: true,
    }),
    typed("Titrant", 12, "The bottle, as it is marked. A fresh one gets a new mark.", {
      of: ({ titrant }) => titrant,
      tells: true,
      isEssential: true,
    }),
    typed("Base", 10, "What the titrant holds.", {
      choices: baseChoices,
      of: ({ base }) => base,
      tells: true,
      isEssential: true,
    }),
    typed("How known", 12, "How that strength is known.", {
      choices: waysKnown,
      of: ({ howKnown }) => howKnown,
    }),
    typed(
      "Stated mol/L",
      10,
      "Strength by weighing, certificate or label, mol/L (not g/L). Left empty where KHP readings stand.",
      { format: "0.0000", of: (record) => record.stated, tells: true },
    ),
    typed("Stated ± %", 9, "How far off that may be, in percent.", {
      format: "0.0",
      of: ({ statedPercent }) => statedPercent,
    }),
    ...numbered((number) =>
      typed(`KHP ${number} g`, 9, "Grams of dried KHP weighed in.", {
        format: "0.000",
        of: ({ phthalate }) => phthalate[number - 1]?.mass,
        tells: true,
      }),
    ),
    ...numbered((number) =>
      typed(`Titre ${number} mL`, 10, "Titrant that KHP took, mL.", {
        format: "0.00",
        of: ({ phthalate }) => phthalate[number - 1]?.titre,
        tells: true,
      }),
    ),
    typed("Blank mL", 12, "Water alone, mL; or the word neutralised.", {
      format: "0.00",
      of: (record) => record.blank,
    }),
    typed("KHP purity %", 9, "From its certificate. Left empty: 100.", {
      format: "0.00",
      of: ({ purity }) => purity,
    }),
    typed("Weighed to g", 9, "Smallest difference the balance shows, g.", {
      format: "0.000",
      of: ({ massStep }) => massStep,
    }),
    typed("Read to mL", 9, "Smallest difference you read on the burette, mL.", {
      format: "0.00",
      of: ({ titreStep }) => titreStep,
    }),
    calculated(
      "Strength mol/L",
      "0.0000",
      "From the KHP readings, mean mass against mean net titre; else as stated.",
      `IF(COUNT(${masses})+COUNT(${titres})>0,` +
        `IF(COUNT(${masses})=COUNT(${titres}),TITRE.MOLARITYFROMKHP(AVERAGE(${masses}),TITRE.CORRECTED(${titres},${blank}),${one("KHP purity %")}),NA()),` +
        `${stated("Stated mol/L")})`,
    ),
    {
      ...calculated(
        "± %",
        "0.00",
        "95 % interval of the strength, from two KHP titrations or more; else as stated.",
        `IF(COUNT(${titres})>1,` +
          `TITRE.KHPUNCERTAINTY(${masses},${titres},${blank},${one("Weighed to g")},${one("Read to mL")}),` +
          `${stated("Stated ± %")})`,
      ),
      mayLack: true,
    },
    typed("Note", 40, "Anything else.", { of: ({ note }) => note }),
  ]),
};
