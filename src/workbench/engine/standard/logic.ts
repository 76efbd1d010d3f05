/** What is asked of a value, and what follows from it. */
import { ofLists, ofValues, type Standard } from "./adapter";
import { doubt } from "./doubt";
import { truth } from "./convert";
import { type Cell, Fault, type Given } from "./value";

const asked = (question: (cell: Cell) => boolean): Standard =>
  ofValues(1, 1, (cell = null) => question(cell));

const isMissing = (cell: Cell): boolean => cell instanceof Fault && cell.sign === "#N/A";

/** The truths of lists: text and empty cells in a range are left out. */
function truths(given: readonly Given[]): boolean[] {
  const found = given.flatMap(({ rows, isRange }) =>
    rows.flat().flatMap((cell) => {
      if (cell instanceof Fault) throw cell;
      if (isRange && (cell === null || typeof cell === "string")) return [];
      return [truth(cell)];
    }),
  );
  if (found.length === 0) throw new Fault("#VALUE!");
  return found;
}

function chosen(place: Cell, choices: readonly Cell[]): Cell {
  const at = Math.trunc(Number(place instanceof Fault ? NaN : place));
  if (place instanceof Fault) throw place;
  if (typeof place === "string") {
    doubt();
    throw new Fault("#VALUE!");
  }
  if (!(at >= 1 && at <= choices.length)) throw new Fault("#VALUE!");
  return choices[at - 1] ?? null;
}

export const logic: Readonly<Record<string, Standard>> = {
  NOT: asked((cell) => !truth(cell)),
  AND: ofLists((given) => truths(given).every(Boolean)),
  OR: ofLists((given) => truths(given).some(Boolean)),
  IF: {
    least: 1,
    most: 3,
    kinds: "v",
    isChoice: true,
    work: ([test, yes, no]) => {
      const isSo = truth(test?.rows[0]?.[0] ?? null);
      const chosen = isSo ? yes : no;
      return chosen ? chosen.rows : isSo;
    },
  },
  IFERROR: ofValues(2, 2, (cell = null, otherwise = null) =>
    cell instanceof Fault ? otherwise : cell,
  ),
  IFNA: ofValues(2, 2, (cell = null, otherwise = null) => (isMissing(cell) ? otherwise : cell)),
  CHOOSE: ofValues(2, 255, (place = null, ...choices) => chosen(place, choices)),
  ISNUMBER: asked((cell) => {
    if (typeof cell === "boolean") doubt();
    return typeof cell === "number";
  }),
  ISTEXT: asked((cell) => typeof cell === "string"),
  ISNONTEXT: asked((cell) => typeof cell !== "string"),
  ISBLANK: asked((cell) => cell === null),
  ISLOGICAL: asked((cell) => typeof cell === "boolean"),
  ISERROR: asked((cell) => cell instanceof Fault),
  ISERR: asked((cell) => cell instanceof Fault && !isMissing(cell)),
  ISNA: asked(isMissing),
  N: ofValues(1, 1, (cell = null) => {
    if (cell instanceof Fault) throw cell;
    return typeof cell === "string" || cell === null ? 0 : Number(cell);
  }),
  NA: { least: 0, most: 0, kinds: "v", work: () => new Fault("#N/A") },
  TRUE: { least: 0, most: 0, kinds: "v", work: () => true },
  FALSE: { least: 0, most: 0, kinds: "v", work: () => false },
};
