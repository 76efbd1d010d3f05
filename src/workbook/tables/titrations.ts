/**
 * The `Titrations` table: one row for each titration. Readings are values, results are live formulas,
 * one for each calculated column.
 */
import { stageNames } from "../../core/titration/stages";
import {
  baseChoices,
  calculated,
  cellOf,
  cellsOf,
  type Column,
  oilChoices,
  type TableShape,
  typed,
} from "./column";

const table = "Titrations";
const one = (heading: string): string => cellOf(table, heading);

const titres = cellsOf(table, "Titre 1 mL", "Titre 6 mL");
const blanks = cellsOf(table, "Blank 1 mL", "Blank 3 mL");
const ownMasses = cellsOf(table, "Own mass 1 g", "Own mass 6 g");
/** Own masses where any is filled in, else the one mass for all. */
const masses = `IF(COUNT(${ownMasses})>0,${ownMasses},${one("Mass g")})`;
const bench = `${titres},${blanks},${one("Molarity mol/L")},${masses}`;

const words = (heading: string, width: number, note: string, choices?: readonly string[]): Column =>
  typed(heading, width, note, choices ? { choices } : {});
const reading = (heading: string, format: string, note: string, width = 10): Column =>
  typed(heading, width, note, { format });

const numbered = (count: number, column: (index: number) => Column): Column[] =>
  Array.from({ length: count }, (_, index) => column(index + 1));

export const titrations: TableShape = {
  name: table,
  title: "Titrations",
  guidance:
    "One row for each titration. Type the readings; the columns of results work themselves out.",
  columns: [
    reading("Date", "yyyy-mm-dd", "Day of the titration.", 12),
    words("Lot", 10, "The lot of oil, as it is marked on its drum."),
    words("Stage", 15, "What had been done to the oil.", stageNames),
    words("Oil", 17, "Kind of oil, by name.", oilChoices),
    words("Operator", 12, "Who titrated."),
    words("Titrant base", 12, "What the burette held.", baseChoices),
    reading("Molarity mol/L", "0.0000", "Strength of the titrant, mol/L (not g/L)."),
    words("Strength set by", 15, "How that strength is known.", [
      "weighing",
      "KHP",
      "certificate",
      "label",
    ]),
    words("Indicator", 16, "Indicator used."),
    reading("Seconds held", "0", "How long the colour stayed: 15 or 30 s."),
    ...numbered(6, (index) => reading(`Titre ${index} mL`, "0.00", "Volume used, mL.")),
    ...numbered(3, (index) =>
      reading(`Blank ${index} mL`, "0.00", "Solvent alone, mL; or the word neutralised.", 12),
    ),
    reading("Mass g", "0.00", "Grams of oil, when one mass serves all titres."),
    ...numbered(6, (index) =>
      reading(`Own mass ${index} g`, "0.00", "Grams of oil in this titre alone."),
    ),
    reading("Read to mL", "0.00", "Smallest difference you read on the burette or syringe, mL."),
    reading("Weighed to g", "0.00", "Smallest difference the balance shows, g."),
    reading("Titrant ± %", "0.0", "How far off the titrant's strength may be, in percent."),
    calculated(
      "Corrected titre mL",
      "0.000",
      "Mean titre less mean blank, mL.",
      `TITRE.CORRECTED(${titres},${blanks})`,
    ),
    calculated(
      "Acid value mg KOH/g",
      "0.00",
      "Mean of each titre's own acid value.",
      `TITRE.MEANACIDVALUE(${bench})`,
    ),
    calculated(
      "FFA %",
      "0.00",
      "The same acid as percent oleic, for display.",
      `TITRE.FFAFROMACIDVALUE(${one("Acid value mg KOH/g")})`,
    ),
    calculated(
      "± FFA %",
      "0.00",
      "Half the width of the 95 % interval of % FFA.",
      `TITRE.FFAUNCERTAINTY(${bench},${one("Read to mL")},${one("Weighed to g")},${one("Titrant ± %")})`,
    ),
    calculated(
      "Verdict",
      "General",
      "What the titres are worth, and what to do next.",
      `TITRE.VERDICT(${titres},${one("Read to mL")},,${masses},${blanks})`,
      60,
    ),
    words("Omitted", 26, "A reading taken out, and why. It leaves its column."),
    words("Note", 40, "Anything else."),
  ],
};
