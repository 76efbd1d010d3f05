/** Earlier titrations, one a row: titres, and beside them blanks and sample masses. */
import { type Outcome, isProblem, problem } from "../../core/problem/problem";
import type { Quantity, Unit } from "../../core/quantity/quantity";
import type { PastTitration } from "../../core/record/usual-scatter";
import { allowedWords, limits } from "../../core/reference/limits";
import { pairs, type Slot } from "../../core/titration/pairs";
import { type Argument, figures, list, type List, optionalList } from "../arguments";
import { neutralisedWords } from "../../core/titration/neutralised";
import { isNeutralised } from "../blanks";
import { isNotFilledIn } from "../cells/cell";
import { type Grid, readGrid } from "../cells/grid";
import { isOneCell } from "../pairing";

/** The word stands for the blanks of its own row, alone in it. */
function withoutWords(grid: Grid): Outcome<Grid> {
  const rowOf = (position: number): number => Math.floor(position / grid.columns);
  const said = new Set(
    grid.cells.flatMap((cell, position) => (isNeutralised(cell) ? [rowOf(position)] : [])),
  );
  const isBeside = grid.cells.some(
    (cell, position) => cell.kind === "number" && !isNotFilledIn(cell) && said.has(rowOf(position)),
  );
  if (isBeside) return problem({ code: "neutralised-and-figure" });
  const cells = grid.cells.map((cell) => (isNeutralised(cell) ? { kind: "empty" as const } : cell));
  return { ...grid, cells };
}

const blankSets: Argument<List<"mL"> | undefined> = {
  says: "The blanks of each, mL, one row for each titration, or the word neutralised.",
  unit: "mL",
  allowed: `${allowedWords(limits.reading)}, or the word neutralised`,
  limits: limits.reading,
  words: neutralisedWords,
  list: true,
  whenLeftOut: "no blanks are counted",
  read(given, argument) {
    const grid = readGrid(given);
    if (grid.leftOut) return undefined;
    const plain = withoutWords(grid);
    return isProblem(plain) ? plain : figures(plain, limits.reading, argument);
  },
};

export const setArguments = {
  titreSets: list(
    limits.reading,
    "titre",
    "The titres of earlier titrations, mL, one row for each titration.",
  ),
  blankSets,
};

export const sampleMassSets = optionalList(
  limits.sampleMass,
  "one sample mass served all titres of a row",
  "Grams of oil for each titre, one row for each titration.",
);

export interface GivenSets {
  readonly titreSets: List<"mL">;
  readonly blankSets: List<"mL"> | undefined;
  readonly sampleMassSets?: List<"g"> | undefined;
}

const rowSlots = <U extends Unit>(
  { columns, slots }: List<U>,
  row: number,
): readonly Slot<Quantity<U>>[] => slots.slice(row * columns, (row + 1) * columns);

const filled = <T>(slots: readonly (T | null)[]): T[] => slots.filter((slot) => slot !== null);

/** One mass in a row serves all of its titres; two or more pair with them. */
function samplesOf(
  titres: readonly Slot<Quantity<"mL">>[],
  masses: readonly Slot<Quantity<"g">>[],
  row: number,
): Outcome<PastTitration["samples"]> {
  if (filled(masses).length < 2) return undefined;
  const paired = pairs(titres, masses, {
    first: "titre",
    second: "sample mass",
    advice: "each needs the other, or give one mass for all of that row",
    place: (position) => ({ row: row + 1, column: position + 1 }),
  });
  return isProblem(paired) ? paired : filled(paired);
}

/** The record that the rows stand for. */
export function recordOf(given: GivenSets): Outcome<PastTitration[]> {
  const { titreSets: titres, blankSets: blanks } = given;
  const own = given.sampleMassSets;
  const masses = own && !isOneCell(own) ? own : undefined;
  for (const [second, sets] of [
    ["blankSets", blanks],
    ["sampleMassSets", masses],
  ] as const) {
    if (sets && sets.rows !== titres.rows) {
      return problem({ code: "rows-differ", first: "titreSets", second });
    }
  }
  const record: PastTitration[] = [];
  for (let row = 0; row < titres.rows; row += 1) {
    const slots = rowSlots(titres, row);
    const samples = masses ? samplesOf(slots, rowSlots(masses, row), row) : undefined;
    if (isProblem(samples)) return samples;
    record.push({
      titres: filled(slots),
      blanks: blanks ? filled(rowSlots(blanks, row)) : [],
      samples,
    });
  }
  return record;
}
