/** Do our functions answer as they must: every one once, and whatever a cell may hold. */
import { catalogue } from "../../functions/catalogue";
import { cellName } from "../../sheet/cell-name";
import type { CellContent, Content } from "../../sheet/port";
import { green, red, type Seen, someOf } from "./lines";
import { answered, cellsAt, formula, keep, put, shown, type Tools, value, write } from "./tools";
import { type TriedCell, triedCells, triedFormula } from "./tried-cells";

const near = (found: CellContent | undefined, wanted: number, within: number): boolean =>
  typeof found === "number" && Math.abs(found - wanted) <= within * Math.abs(wanted);

const single = catalogue.filter(({ example }) => !Array.isArray(example.gives));

/** An example is given to ten digits at most. */
function isAsGiven(found: CellContent | undefined, gives: unknown): boolean {
  return typeof gives === "number" ? near(found, gives, 1e-7) : found === gives;
}

export async function everyFunction(tools: Tools): Promise<Seen> {
  const block = cellsAt(0, 0, single.length);
  await write(
    tools,
    put(
      block,
      single.map(({ example }) => [formula(example.formula)]),
    ),
  );
  const found = await answered(tools, block);
  const wrong = single.flatMap(({ id, example }, row) =>
    isAsGiven(found[row]?.[0], example.gives) ? [] : [`${id} shows ${shown(found[row]?.[0])}`],
  );
  return wrong.length === 0
    ? green("every-function", `All ${String(single.length)} answer as they must.`)
    : red("every-function", `${String(wrong.length)} differ: ${someOf(wrong)}.`);
}

const heldColumn = 2;

const held = ({ holds, formulaHolds, format }: TriedCell): Content => {
  const dress = format === undefined ? {} : { format };
  if (formulaHolds !== undefined) return { ...formula(formulaHolds), ...dress };
  return holds === undefined ? keep : { ...value(holds), ...dress };
};

const codes = { missing: "#N/A", wrong: "#VALUE!" } as const;

const isAsExpected = (found: CellContent | undefined, { expected }: TriedCell): boolean =>
  typeof expected === "number"
    ? near(found, expected, 1e-6)
    : typeof found === "object" && found.error === codes[expected];

export async function whatCellsHold(tools: Tools): Promise<Seen> {
  const block = cellsAt(0, heldColumn, triedCells.length, 2);
  await write(
    tools,
    put(
      block,
      triedCells.map((each, row) => [
        held(each),
        formula(triedFormula(each, cellName(row, heldColumn))),
      ]),
    ),
  );
  const found = await answered(tools, block);
  const wrong = triedCells.flatMap((each, row) =>
    isAsExpected(found[row]?.[1], each) ? [] : [`${each.what}: ${shown(found[row]?.[1])}`],
  );
  return wrong.length === 0
    ? green("cells", `All ${String(triedCells.length)} mean what they must.`)
    : red("cells", `${String(wrong.length)} differ: ${someOf(wrong)}.`);
}
