/** Two ranges that pair cell by cell, as helper columns: one figure for each replicate. */
import type { TwinArgument } from "../../../functions/twin";
import { blanksOf, isAbove, type BlanksText } from "./blanks";
import { cellsOf, checked } from "./list";
import type { Reading } from "./reading";
import { and, isEmpty, isWithin, missing, never, when, wrong } from "./text";

export interface Pairs {
  /** Checked figures, empty where neither is filled in; an error where one lacks the other. */
  readonly first: TwinArgument;
  readonly second: TwinArgument;
}

const isLine = ({ rows, columns }: TwinArgument): boolean => rows <= 1 || columns <= 1;

export const isOneCell = ({ rows, columns }: TwinArgument): boolean => rows * columns === 1;

/** Within the argument's limits; a place beyond the end of the range is not. */
const isAllowed = (reading: Reading, name: string, cell: string | undefined): string => {
  const { limits } = reading.reader(name);
  return cell === undefined || !limits ? never : isWithin(cell, limits);
};

const emptyOf = (cell: string | undefined): string => (cell === undefined ? "TRUE" : isEmpty(cell));

/** Rows and columns pair by position; blocks must have the same shape. */
export const canPair = (a: TwinArgument, b: TwinArgument): boolean =>
  (a.rows === b.rows && a.columns === b.columns) || (isLine(a) && isLine(b));

export function pairsOf(
  reading: Reading,
  names: readonly [string, string],
  labels: readonly [string, string],
): Pairs | undefined {
  const [first, second] = names.map((name) => reading.call.argument(name));
  if (!first || !second) {
    for (const name of names) if (!reading.call.argument(name)) reading.meaning(name, undefined);
    return undefined;
  }
  if (!canPair(first, second)) {
    reading.refuse(wrong);
    return undefined;
  }
  const [a, b] = [cellsOf(first), cellsOf(second)];
  const places = Array.from({ length: Math.max(a.length, b.length) }, (_, place) => place);
  const firsts = places.map((place) => {
    const both = and(
      isAllowed(reading, names[0], a[place]),
      isAllowed(reading, names[1], b[place]),
    );
    const empty = and(emptyOf(a[place]), emptyOf(b[place]));
    return when(empty, '""', when(both, a[place] ?? "0", wrong));
  });
  const one = reading.call.helperColumn(labels[0], firsts);
  const seconds = places.map((place) => when(`${one.cell(place, 0)}=""`, '""', b[place] ?? "0"));
  const two = reading.call.helperColumn(labels[1], seconds);
  reading.needs(`COUNT(${one.text})=0`);
  return { first: one, second: two };
}

export interface Replicates {
  readonly blank: BlanksText;
  /** mL of titrant per gram of oil, blank taken off: one for each titre, empty where there is none. */
  readonly net: TwinArgument;
  /** Mean sample mass, g. */
  readonly meanMass: string;
  readonly hasOwnMasses: boolean;
}

const titreLabel = "titre, mL";

/** One mass serves all titres. */
function withOneMass(
  reading: Reading,
  titres: TwinArgument,
  massesName: string,
): [TwinArgument, (place: number) => string] {
  const cells = cellsOf(titres).map((cell) => checked(reading, "titres", cell));
  const column = reading.call.helperColumn(titreLabel, cells);
  reading.needs(`COUNT(${column.text})=0`);
  const mass = oneMass(reading, massesName);
  return [column, () => mass];
}

function oneMass(reading: Reading, name: string): string {
  const given = reading.call.argument(name);
  if (!given) return "1";
  const read = reading.cell(name, given);
  const cell = given.cell(0, 0);
  if (read.isKnown) return cell;
  reading.needs(`${cell}=0`);
  reading.needs(`TRIM(${cell})=""`);
  reading.allow(isAllowed(reading, name, cell));
  return cell;
}

/** Titres less the mean blank, over their own masses: of oil, or of what a titrant is set against. */
export function replicatesOf(
  reading: Reading,
  massesName = "sampleMasses",
): Replicates | undefined {
  const titres = reading.call.argument("titres");
  const masses = reading.call.argument(massesName);
  const blank = blanksOf(reading);
  if (!titres || !masses) {
    if (!titres) reading.meaning("titres", undefined);
    if (!masses) reading.meaning(massesName, undefined);
    return undefined;
  }
  const hasOwnMasses = !isOneCell(masses);
  let column: TwinArgument;
  let massAt: (place: number) => string;
  let meanMass: string;
  if (hasOwnMasses) {
    const pairs = pairsOf(reading, ["titres", massesName], [titreLabel, "sample mass, g"]);
    if (!pairs) return undefined;
    column = pairs.first;
    massAt = (place) => pairs.second.cell(place, 0);
    meanMass = `AVERAGE(${pairs.second.text})`;
  } else {
    [column, massAt] = withOneMass(reading, titres, massesName);
    meanMass = massAt(0);
  }
  const net = reading.call.helperColumn(
    "titre less mean blank, over sample mass, mL/g",
    Array.from({ length: column.rows }, (_, place) => {
      const titre = column.cell(place, 0);
      const ratio = `(${titre}-${blank.mean})/${massAt(place)}`;
      return when(`${titre}=""`, '""', when(isAbove(titre, blank.mean), ratio, wrong));
    }),
  );
  return { blank, net, meanMass, hasOwnMasses };
}

/** No call can be made of what is not there. */
export const nothing = { kind: "formula", formula: missing } as const;
