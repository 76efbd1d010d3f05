/** What the what-if tables go by: figures and words to change, one below another from row 4 on. */
import { offeredUnitNames, offeredUnits } from "../../../core/quantity/units";
import { baseChoices, oilChoices } from "../../../workbook/tables/column";

export interface Input {
  readonly label: string;
  readonly value: number | string;
  readonly format: string;
  readonly help: string;
  readonly words?: readonly string[];
}

/** One below another, from row 4 on. */
export const inputs: readonly Input[] = [
  {
    label: "Unit",
    value: "l",
    format: "",
    help: `Unit of the batch sizes: ${offeredUnitNames}.`,
    words: offeredUnits,
  },
  {
    label: "Oil",
    value: "used cooking oil",
    format: "",
    help: "Kind of oil, by name; its density turns volumes into kilograms.",
    words: oilChoices,
  },
  {
    label: "Base, of the lye",
    value: "KOH",
    format: "",
    help: "What the lye is: KOH, NaOH, or a methoxide.",
    words: baseChoices,
  },
  {
    label: "Assay, %",
    value: 90,
    format: "0.0",
    help: "How much of the lye is base, in percent: 90, not 0.90.",
  },
  {
    label: "Base charge, g/L",
    value: 7,
    format: "0.0",
    help: "Pure base for the reaction, grams per litre of oil.",
  },
  {
    label: "Allowed acid, % FFA",
    value: 5,
    format: "0.0",
    help: "Above this no dose is given. A higher figure says that you mean to go on.",
  },
  {
    label: "Methanol, mol/mol",
    value: 6,
    format: "0.0",
    help: "Moles of methanol to one of triglyceride: 6 is usual (commonly cited).",
  },
];

/** The figure's cell, as formulas name it. */
function givenCell(label: string): string {
  const place = inputs.findIndex((input) => input.label.startsWith(label));
  if (place < 0) throw new RangeError(`nothing is given as "${label}"`);
  return `$B$${String(4 + place)}`;
}

export const given = {
  unit: givenCell("Unit"),
  oil: givenCell("Oil"),
  base: givenCell("Base,"),
  assay: givenCell("Assay"),
  perLitre: givenCell("Base charge"),
  limit: givenCell("Allowed acid"),
  ratio: givenCell("Methanol"),
  /** Worked out, below the others. */
  charge: `$B$${String(4 + inputs.length)}`,
} as const;
