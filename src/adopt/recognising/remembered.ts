/**
 * A mapping as a small table that people can read and change on a sheet of their workbook: one row for
 * each column that is used and for each figure that holds for all rows.
 */
import { cellName, columnLetters, columnNumber } from "../../sheet/cell-name";
import type { LogbookMapping, MappedColumn, MappedConstant } from "./mapping";
import type { TableGuess } from "./recognise";
import { bases, type Basis, hasBasis } from "./basis";
import { SaidRead, saidRows } from "./by-hand/said-rows";
import { isRoleId, roleOf, roles, type RoleId } from "./roles";

export const rememberedTable = "LogbookColumns";
export const rememberedSheet = "Logbook columns";
export const rememberedHeadings = [
  "Sheet",
  "Heading row",
  "Column",
  "Heading",
  "Is",
  "Unit",
  "For all rows",
] as const;

export type RememberedRow = readonly (string | number)[];

/** "g/L", "g/L, as weighed" */
const unitWords = (unit: string | undefined, basis: Basis | undefined): string =>
  [unit ?? "", basis ?? ""].filter((each) => each !== "").join(", ");

/** The unit and the basis of a role; undefined where a word is neither. */
function unitRead(
  role: RoleId,
  words: string,
): { unit: string | undefined; basis: Basis | undefined } | undefined {
  const parts = words.split(",").flatMap((each) => (each.trim() === "" ? [] : [each.trim()]));
  const units: readonly string[] = roleOf(role).units;
  const basis = bases.find((each) => hasBasis(role) && parts.includes(each));
  const others = parts.filter((each) => each !== basis);
  // a cell may have been changed since, and formulas are made by the unit
  if (others.length > 1 || others.some((each) => !units.includes(each))) return undefined;
  return { unit: others[0], basis };
}

const columnRow = ({ sheet, place }: LogbookMapping, each: MappedColumn): RememberedRow => [
  sheet,
  place.headingRow + 1,
  columnLetters(each.column),
  each.heading,
  roleOf(each.role).words,
  unitWords(each.unit, each.basis),
  "",
];

const constantRow = (
  { sheet, place }: LogbookMapping,
  { role, unit, basis, from }: MappedConstant,
): RememberedRow => [
  sheet,
  place.headingRow + 1,
  "",
  from.kind === "cell" ? from.label : "typed",
  roleOf(role).words,
  unitWords(unit, basis),
  from.kind === "cell" ? cellName(from.row, from.column) : from.value,
];

export const rememberedRows = (mapping: LogbookMapping): RememberedRow[] => [
  ...mapping.columns.filter(({ role }) => role !== "other").map((each) => columnRow(mapping, each)),
  ...mapping.constants.map((each) => constantRow(mapping, each)),
  ...saidRows(mapping),
];

/** The heading rows, from 0, of the logbooks on a sheet that were agreed to. */
export const rememberedHeadingRows = (
  sheet: string,
  rows: readonly (readonly unknown[])[],
): ReadonlySet<number> =>
  new Set(
    rows.flatMap(([of, heading]) =>
      of === sheet && Number(heading) >= 1 ? [Number(heading) - 1] : [],
    ),
  );

const roleByWords = (words: string): RoleId | undefined =>
  roles.find((role) => role.words === words.trim().toLowerCase() || role.words === words.trim())
    ?.id ?? (isRoleId(words) ? words : undefined);

function placeOfCell(address: string): { row: number; column: number } | undefined {
  const found = /^([A-Z]{1,3})(\d{1,7})$/i.exec(address);
  if (!found) return undefined;
  return { row: Number(found[2]) - 1, column: columnNumber(found[1] ?? "") };
}

/**
 * The mapping that was agreed to for a table that is found again; undefined when none was, or when the
 * headings are no longer what they were. Columns that are new stay unused.
 */
export function rememberedMapping(
  guess: TableGuess,
  rows: readonly (readonly unknown[])[],
): LogbookMapping | undefined {
  const own = rows
    .map((row) => row.map((each) => String(each ?? "")))
    .filter(
      ([sheet, heading]) => sheet === guess.sheet && Number(heading) === guess.place.headingRow + 1,
    );
  if (own.length === 0) return undefined;
  const columns: MappedColumn[] = guess.columns.map(({ column, heading }) => ({
    column,
    heading,
    role: "other",
    unit: undefined,
  }));
  const constants: MappedConstant[] = [];
  const said = new SaidRead();
  for (const [, , letter = "", heading = "", is = "", words = "", forAll = ""] of own) {
    if (said.read(is, heading, words, forAll)) continue;
    const role = roleByWords(is);
    const read = role && unitRead(role, words);
    if (role === undefined || read === undefined) return undefined;
    const as = { unit: read.unit, ...(read.basis === undefined ? {} : { basis: read.basis }) };
    if (letter === "") {
      const cell = heading === "typed" ? undefined : placeOfCell(forAll);
      const from = cell
        ? ({ kind: "cell", ...cell, label: heading } as const)
        : ({ kind: "typed", value: forAll } as const);
      constants.push({ role, ...as, from });
      continue;
    }
    const at = columns.findIndex(
      (each) => columnLetters(each.column) === letter && each.heading === heading,
    );
    if (at < 0) return undefined;
    columns[at] = { ...(columns[at] as MappedColumn), role, ...as };
  }
  return {
    sheet: guess.sheet,
    place: guess.place,
    columns,
    constants,
    commas: guess.commas,
    ...said.all(),
  };
}
