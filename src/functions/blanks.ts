/** The blanks: the one argument where leaving it out and leaving it empty mean different things. */
import { neutralisedWord, neutralisedWords } from "../core/titration/neutralised";
import type { Millilitre } from "../core/quantity/quantity";
import { isProblem, type Problem, problem } from "../core/problem/problem";
import { allowedWords, limits } from "../core/reference/limits";
import { neutralised } from "../core/titration/corrected-titre";
import { type Argument, figures } from "./arguments";
import { type Cell, isNotFilledIn } from "./cells/cell";
import { readGrid } from "./cells/grid";

export const isNeutralised = (cell: Cell): boolean =>
  cell.kind === "text" && /^neutrali[sz]ed$/i.test(cell.text.trim());

/** What is no figure could be the word. */
const withTheWord = ({ fields }: Problem): Problem =>
  problem(fields.code === "not-a-number" ? { ...fields, orWord: neutralisedWord } : fields);

const empty: Cell = { kind: "empty" };

/**
 * The blanks. Left out, or the one word `neutralised`, alone: the solvent was neutralised beforehand
 * and there is nothing to subtract. Given but empty: no blank yet.
 */
export const blanks = (place: "required" | "optional"): Argument<readonly Millilitre[]> => ({
  says: "Blank titres of the same solvent, mL, or the word neutralised.",
  unit: "mL",
  allowed: `${allowedWords(limits.reading)}, or the word neutralised`,
  limits: limits.reading,
  words: neutralisedWords,
  list: true,
  whenLeftOut: "the solvent was neutralised beforehand",
  listedAsRequired: place === "required",
  read(given, argument) {
    const grid = readGrid(given);
    if (grid.leftOut) return neutralised;
    const filled = grid.cells.filter((cell) => !isNotFilledIn(cell));
    if (filled.length === 0) return problem({ code: "no-blank" });
    if (filled.every(isNeutralised)) return neutralised;
    // beside the word, what is no figure either is what is wrong
    const others = grid.cells.map((cell) => (isNeutralised(cell) ? empty : cell));
    const found = figures({ ...grid, cells: others }, limits.reading, argument);
    if (isProblem(found)) return withTheWord(found);
    return filled.some(isNeutralised) ? problem({ code: "neutralised-and-figure" }) : found.filled;
  },
});
