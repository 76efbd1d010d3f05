/**
 * A titration record as what is typed into its row, by heading. Only what is filled in: an omitted
 * reading leaves its cell empty and stands in words in the column Omitted.
 */
import { type Exact, isExact } from "../../core/exact/exact";
import type { BookValue } from "../../sheet/book";
import { omittedWords } from "./omitted-words";
import type { TitrationRecord } from "./titration-record";

export interface RowValue {
  readonly heading: string;
  readonly value: BookValue;
}

type Given = BookValue | Exact | null | undefined;

/** One column for each place: "Titre 1 mL", "Titre 2 mL". */
const numbered = (
  name: string,
  unit: string,
  values: readonly (Exact | null)[],
): [string, Given][] =>
  values.map((value, index) => [`${name} ${String(index + 1)} ${unit}`, value]);

const blanks = (record: TitrationRecord): [string, Given][] =>
  record.blanks === "neutralised"
    ? [["Blank 1 mL", "neutralised"]]
    : numbered("Blank", "mL", record.blanks);

const masses = ({ masses: given }: TitrationRecord): [string, Given][] =>
  isExact(given) ? [["Mass g", given]] : numbered("Own mass", "g", given as (Exact | null)[]);

const columns = (record: TitrationRecord): [string, Given][] => [
  ["Date", record.date],
  ["Lot", record.lot],
  ["Stage", record.stage],
  ["Oil", record.oil],
  ["Operator", record.operator],
  ["Titrant base", record.titrantBase],
  ["Molarity mol/L", record.molarity],
  ["Strength set by", record.strengthSetBy],
  ["Indicator", record.indicator],
  ["Seconds held", record.secondsHeld],
  ...numbered("Titre", "mL", record.titres),
  ...blanks(record),
  ...masses(record),
  ["Read to mL", record.titreStep],
  ["Weighed to g", record.massStep],
  ["Titrant ± %", record.titrantPercent],
  ["Omitted", omittedWords(record.omitted, record.titreStep)],
  ["Note", record.note],
];

export const rowValues = (record: TitrationRecord): RowValue[] =>
  columns(record).flatMap(([heading, given]) =>
    given === null || given === undefined || given === ""
      ? []
      : [{ heading, value: isExact(given) ? given.toNumber() : given }],
  );
