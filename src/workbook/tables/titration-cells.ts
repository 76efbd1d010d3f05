/** The cells of a row of `Titrations`, as its formulas name them, and where its readings stand. */
import { cellOf, cellsOf } from "./column";

export const titrationsName = "Titrations";
/** This row's cell in a column. */
export const one = (heading: string): string => cellOf(titrationsName, heading);

const counted = (count: number, heading: (index: number) => string): string[] =>
  Array.from({ length: count }, (_, index) => heading(index + 1));

/** Where readings stand, in their order. */
export const readingHeadings = {
  titres: counted(6, (index) => `Titre ${index} mL`),
  blanks: counted(3, (index) => `Blank ${index} mL`),
  ownMasses: counted(6, (index) => `Own mass ${index} g`),
} as const;

/** How the hand scattered before, as of the row's day: both or neither. */
export const usualHeadings = ["Usual scatter mL", "Usual freedom"] as const;

/** Seen beside the lot. */
export const headlineHeadings: readonly string[] = ["FFA %", "± FFA %", "Worth"];

export const sampleByHeading = "Sample by";
export const worthHeading = "Worth";

const spanOf = (headings: readonly string[]): string =>
  cellsOf(titrationsName, headings[0] ?? "", headings.at(-1) ?? "");
export const titres = spanOf(readingHeadings.titres);
export const blanks = spanOf(readingHeadings.blanks);
const ownMasses = spanOf(readingHeadings.ownMasses);
/** Own masses where any is filled in, else the one mass for all. */
export const masses = `IF(COUNT(${ownMasses})>0,${ownMasses},${one("Mass g")})`;
/** The arguments by which a result is worked out. */
export const bench = `${titres},${blanks},${one("Molarity mol/L")},${masses}`;
/** The arguments that bring in the record. */
export const usual = usualHeadings.map(one).join(",");
