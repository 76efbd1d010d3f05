/** Where the formulas of a logbook's new columns take their figures: cells of the row, lone cells, typed figures. */
import { columnLetters } from "../cell-name";
import { type Base, baseNamed } from "../../core/reference/bases";
import { amountUnitNamed } from "../../core/quantity/units";
import { oilNamed } from "../../core/reference/oils";
import { amountUnitOf, baseWritten, soleBase, unitWritten } from "../recognising/written-units";
import { columnOf, columnsOf, type LogbookMapping } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { heldCell, type SheetCells } from "../recognising/sheet-cells";

/** A part of a formula, for a row counted from 1. */
export type Part = (row: number) => string;

export interface Sources {
  readonly titres: Part | undefined;
  readonly blanks: Part | undefined;
  /** mol/L */
  readonly molarity: Part | undefined;
  /** g/L, where that is what is known; then `titrantBase` as well. */
  readonly strength: Part | undefined;
  readonly titrantBase: Part | undefined;
  readonly mass: Part | undefined;
  readonly sampleVolume: Part | undefined;
  readonly amount: Part | undefined;
  readonly unit: Part | undefined;
  /** Density or name; undefined: not named. */
  readonly oil: Part | undefined;
  readonly base: Part | undefined;
  /** The one base of all rows, where there is but one. */
  readonly onlyBase: Base | undefined;
  readonly onlyTitrantBase: Base | undefined;
  /** % */
  readonly assay: Part | undefined;
  readonly charge: { readonly part: Part; readonly per: "%" | "g/L" | "g/kg" } | undefined;
  readonly titreStep: Part | undefined;
  readonly massStep: Part | undefined;
  readonly titrantDoubt: Part | undefined;
  /** What the row holds as its acid value or % FFA, where it has no titres. */
  readonly heldAcidValue: Part | undefined;
  readonly heldFfa: Part | undefined;
}

const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;

/** "90" and "0,5" as a figure, anything else as a text. */
const literal = (typed: string): string => {
  const plain = typed.replace(",", ".");
  return /^-?\d+(\.\d+)?$/.test(plain) ? plain : quoted(typed);
};

/** The different words of a column. */
function wordsIn(cells: SheetCells, { place }: LogbookMapping, column: number): string[] {
  const found = new Set<string>();
  for (let row = place.firstRow; row <= place.lastRow; row += 1) {
    const { value } = heldCell(cells, row, column);
    if (typeof value === "string" && value.trim() !== "") found.add(value.trim());
  }
  return [...found];
}

/** The longest text a formula can hold. */
const longestText = 255;

/** Their words where ours are wanted: IF(N5="imp gal","uk_gal",N5). */
function translated(
  part: Part,
  words: readonly string[],
  ours: (word: string) => string | undefined,
): Part | undefined {
  const pairs = words.map((word) => [word, ours(word)] as const);
  if (pairs.some(([, own]) => own === undefined) || pairs.length > 8) return undefined;
  if (words.some((word) => word.length > longestText)) return undefined;
  const changed = pairs.filter(([, own]) => own !== "");
  return (row) =>
    changed.reduceRight(
      (rest, [word, own]) => `IF(${part(row)}=${quoted(word)},${quoted(own ?? "")},${rest})`,
      part(row),
    );
}

/** @param onSheet what stands before a cell seen from another sheet: "'Oil book'!" */
export function sourcesOf(mapping: LogbookMapping, cells: SheetCells, onSheet = ""): Sources {
  const unitOf = (role: RoleId): string | undefined =>
    columnOf(mapping, role)?.unit ?? mapping.constants.find((each) => each.role === role)?.unit;
  const plain = (role: RoleId): Part | undefined => {
    const column = columnOf(mapping, role);
    if (column) return (row) => `${onSheet}${columnLetters(column.column)}${String(row)}`;
    const from = mapping.constants.find((each) => each.role === role)?.from;
    if (!from) return undefined;
    const text =
      from.kind === "typed"
        ? literal(from.value)
        : `${onSheet}$${columnLetters(from.column)}$${String(from.row + 1)}`;
    return () => text;
  };
  const times = (part: Part | undefined, factor: string): Part | undefined =>
    part && ((row) => `${part(row)}${factor}`);
  const side = (role: RoleId): Part | undefined => {
    const columns = columnsOf(mapping, role).map(({ column }) => column);
    const [first] = columns;
    if (first === undefined) return plain(role);
    const last = columns[columns.length - 1] ?? first;
    // A list is one range: columns that do not stand side by side are not one.
    if (last - first !== columns.length - 1) return undefined;
    return (row) => {
      const from = `${onSheet}${columnLetters(first)}${String(row)}`;
      return first === last ? from : `${from}:${columnLetters(last)}${String(row)}`;
    };
  };
  const isPercent = (role: RoleId): boolean => {
    const column = columnOf(mapping, role)?.column;
    if (column !== undefined)
      return heldCell(cells, mapping.place.firstRow, column).format.includes("%");
    const from = mapping.constants.find((each) => each.role === role)?.from;
    return from?.kind === "cell" && heldCell(cells, from.row, from.column).format.includes("%");
  };
  const inPercent = (role: RoleId): Part | undefined =>
    unitOf(role) === "fraction" || isPercent(role) ? times(plain(role), "*100") : plain(role);
  const named = (role: RoleId, ours: (word: string) => string | undefined): Part | undefined => {
    const part = plain(role);
    const column = columnOf(mapping, role);
    if (!part || !column) return part;
    return translated(part, wordsIn(cells, mapping, column.column), ours);
  };
  const ourBase = (word: string): string | undefined =>
    baseNamed(word) ? "" : baseWritten(word)?.name;
  const ourUnit = (word: string): string | undefined =>
    amountUnitNamed(word) ? "" : unitWritten(word)?.name;
  const ourOil = (word: string): string | undefined => (oilNamed(word) ? "" : undefined);
  const inHeadings = soleBase(mapping);
  const only = (role: RoleId): Base | undefined => {
    const column = columnOf(mapping, role);
    const from = mapping.constants.find((each) => each.role === role)?.from;
    const lone = from?.kind === "cell" ? heldCell(cells, from.row, from.column).value : from?.value;
    const words = column
      ? wordsIn(cells, mapping, column.column)
      : typeof lone === "string"
        ? [lone]
        : [];
    const found = new Set(words.map(baseWritten));
    return found.size === 1 ? [...found][0] : undefined;
  };
  const always = (text: string | undefined): Part | undefined =>
    text === undefined ? undefined : () => quoted(text);
  const amount = plain("oilAmount") ?? plain("oilMass");
  const amountUnit =
    plain("oilAmount") === undefined ? "kg" : amountUnitOf(unitOf("oilAmount"))?.name;
  const charge = plain("baseCharge");
  return {
    titres: side("titre") ?? plain("correctedTitre") ?? plain("meanTitre"),
    blanks:
      columnsOf(mapping, "titre").length === 0 && plain("correctedTitre")
        ? undefined
        : side("blank"),
    molarity: plain("molarity"),
    strength: unitOf("strength") === "% w/v" ? times(plain("strength"), "*10") : plain("strength"),
    titrantBase: named("titrantBase", ourBase) ?? always(inHeadings.titrant?.name),
    mass: side("sampleMass"),
    sampleVolume: plain("sampleVolume"),
    amount,
    unit: named("amountUnit", ourUnit) ?? always(amountUnit),
    oil: plain("density") ?? named("oil", ourOil),
    base: named("base", ourBase) ?? always(inHeadings.catalyst?.name),
    onlyBase: only("base") ?? inHeadings.catalyst,
    onlyTitrantBase: only("titrantBase") ?? inHeadings.titrant,
    assay: inPercent("assay"),
    charge: charge && { part: charge, per: (unitOf("baseCharge") ?? "%") as "%" | "g/L" | "g/kg" },
    titreStep: plain("titreStep"),
    massStep: plain("massStep"),
    titrantDoubt: plain("titrantDoubt"),
    heldAcidValue: plain("acidValue"),
    heldFfa: inPercent("ffa"),
  };
}
