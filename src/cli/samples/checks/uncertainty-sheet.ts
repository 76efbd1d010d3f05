/** The worked examples of QUAM A2 and A3 and of GUM H.1, step by step in cells. */
import type { BookCell, BookSheet } from "../../../sheet/book";
import { heading, title, typed, words, worked } from "../../../workbook/sample/cells";

const sheet = "Uncertainty";

interface Line {
  readonly label: string;
  /** A figure as printed, or a formula in which {label} stands for another line's cell. */
  readonly is: number | string;
  readonly format: string;
  readonly note: string;
}

const line = (label: string, is: number | string, format: string, note: string): Line => ({
  label,
  is,
  format,
  note,
});
const part = (text: string): Line => line(text, "", "", "");

const relative = "0.000000";

const lines: readonly Line[] = [
  part("QUAM:2012, example A2: sodium hydroxide against KHP"),
  line("KHP, g", 0.3888, "0.0000", "Mass weighed by difference."),
  line("titre, mL", 18.64, "0.00", "Volume of sodium hydroxide used."),
  line("strength", "=TITRE.MOLARITYFROMKHP({KHP, g},{titre, mL})", "0.00000", "mol/L."),
  line("repeatability", 0.0005, relative, "Relative, as printed."),
  line("weighing", "=SQRT(2)*0.00015/SQRT(3)/{KHP, g}", relative, "Twice 0.15 mg, rectangular."),
  line("purity", "=0.0005/SQRT(3)", relative, "1.0000 within 0.0005, rectangular."),
  line("molar mass", "=0.0038/204.2212", relative, "As printed."),
  line(
    "volume",
    "=SQRT((0.03/SQRT(6))^2+(19*0.00021*3/1.959963984540054)^2)/{titre, mL}",
    relative,
    "Burette 0.03 mL, triangular; 3 C of room temperature, 95 %.",
  ),
  line(
    "strength, relative",
    "=SQRT(SUMSQ({repeatability},{weighing},{purity},{molar mass},{volume}))",
    relative,
    "Root of the sum of squares.",
  ),
  part("QUAM:2012, example A3: hydrochloric acid"),
  line("acid, mol/L", 0.10139, "0.00000", "As printed."),
  line("repeatability, one", 0.001, relative, "Relative, one titration."),
  line(
    "first titre",
    "=SQRT((0.03/SQRT(6))^2+(15*0.00021*4/SQRT(3))^2)/14.89",
    relative,
    "15 mL piston burette, 4 C.",
  ),
  line(
    "second titre",
    "=SQRT((0.03/SQRT(6))^2+(19*0.00021*4/SQRT(3))^2)/18.64",
    relative,
    "19 mL, 4 C.",
  ),
  line(
    "pipette",
    "=SQRT((0.02/SQRT(6))^2+(15*0.00021*4/SQRT(3))^2)/15",
    relative,
    "15 mL pipette, 4 C.",
  ),
  line(
    "acid, one titration",
    "={acid, mol/L}*SQRT(SUMSQ({repeatability, one},{weighing},{purity},{molar mass},{first titre},{second titre},{pipette}))",
    "0.000000",
    "mol/L.",
  ),
  line(
    "acid, mean of three",
    "={acid, mol/L}*SQRT(SUMSQ({repeatability, one}/SQRT(3),{weighing},{purity},{molar mass},{first titre},{second titre},{pipette}))",
    "0.000000",
    "mol/L.",
  ),
  part("GUM H.1: the end gauge"),
  line("standard, nm", 25, "0.0", "18 degrees of freedom."),
  line("comparison, nm", 9.7, "0.0", "25.6 degrees of freedom."),
  line("comparator, nm", 2.9, "0.0", "50 degrees of freedom."),
  line("temperature, nm", 16.6, "0.0", "2 degrees of freedom."),
  line(
    "gauge, freedom",
    "=INT(SUMSQ({standard, nm},{comparison, nm},{comparator, nm},{temperature, nm})^2/({standard, nm}^4/18+{comparison, nm}^4/25.6+{comparator, nm}^4/50+{temperature, nm}^4/2))",
    "0",
    "Welch and Satterthwaite, cut off.",
  ),
];

const rowsAbove = 3;

function localCell(label: string): string {
  const place = lines.findIndex((each) => each.label === label);
  if (place < 0) throw new RangeError(`there is no line "${label}"`);
  return `$C$${String(rowsAbove + place + 1)}`;
}

export const uncertaintyCell = (label: string): string => `${sheet}!${localCell(label)}`;

function row({ label, is, format, note }: Line): (BookCell | null)[] {
  if (is === "") return [heading(label), { style: "heading" }, { style: "heading" }];
  const written =
    typeof is === "number"
      ? typed(is, format)
      : worked(
          is.replace(/\{([^}]+)\}/g, (_, name: string) => localCell(name)),
          format,
        );
  return [words(label), words(note), written];
}

const rows: readonly (readonly (BookCell | null)[])[] = [
  [title("Worked examples of uncertainty")],
  [
    words(
      "Each contribution in a cell of its own; the sheet Checks takes the last of each example.",
    ),
  ],
  [],
  ...lines.map(row),
];

export const uncertaintySheet: BookSheet = {
  name: sheet,
  rows,
  columnWidths: [52, 60, 14],
  tables: [],
  frozenRows: 2,
  inputs: lines.flatMap(({ is, note }, place) =>
    typeof is === "number"
      ? [{ area: { row: rowsAbove + place, column: 2, rows: 1, columns: 1 }, help: note }]
      : [],
  ),
  print: {
    area: { row: 0, column: 0, rows: rows.length, columns: 3 },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: 0, rows: 2 },
  },
};
