/** Answers over many cells, a call the program lost, and how long a thousand cells take. */
import { isFault } from "../../sheet/port";
import { heal } from "../healing/heal";
import { amber, green, red, type Seen } from "./lines";
import {
  answered,
  cellsAt,
  formula,
  put,
  read,
  shown,
  stoppedBy,
  type Tools,
  value,
  write,
} from "./tools";

const spillColumn = 8;

/** Its own cell and the two below it, with the one to its right. */
const spilling = cellsAt(0, spillColumn, 3, 2);
const inTheWay = cellsAt(0, spillColumn + 1);

const isSpilled = (cells: readonly (readonly unknown[])[]): boolean =>
  cells.flat().every((held) => held !== "" && typeof held !== "object");

export async function spilledAnswers(tools: Tools): Promise<Seen> {
  await write(
    tools,
    put(cellsAt(0, spillColumn), [[formula("=TITRE.SPREAD({2.4,2.5,2.45},0.05)")]]),
  );
  const first = await answered(tools, spilling);
  if (!isSpilled(first)) {
    const below = first.map((row) => shown(row[0])).join(", ");
    return red("spills", `It does not spill: its cell and those below show ${below}.`);
  }
  await write(tools, put(inTheWay, [[value("x")]]));
  const [blocked] = (await answered(tools, cellsAt(0, spillColumn)))[0] ?? [];
  await write(tools, put(inTheWay, [[value("")]]));
  const again = await answered(tools, spilling);
  const isBlocked = typeof blocked === "object" && blocked.error === "#SPILL!";
  if (!isBlocked) return red("spills", `With a cell in its way it shows ${shown(blocked)}.`);
  return isSpilled(again)
    ? green("spills", "It spills, shows #SPILL! when a cell is in the way, and spills again.")
    : red("spills", "It does not spill again once nothing is in its way.");
}

const healingCell = cellsAt(0, 14);
/** By hand: 56.1 × 0.1 × 2.3 ÷ 10. */
const acidValue = 1.2903;

export async function mendedNames(tools: Tools): Promise<Seen> {
  // as a file holds it: what the program shows of a call it lost
  await write(tools, put(healingCell, [[formula("=_xldudf_TITRE_ACIDVALUE(2.3,0.1,10)")]]));
  const before = (await answered(tools, healingCell))[0]?.[0];
  if (before === acidValue) {
    return amber("healing", "Not seen: a call as a file holds it was answered at once.");
  }
  const healing = await heal(tools.host, tools.pause);
  if (isFault(healing)) throw stoppedBy(healing);
  const after = (await answered(tools, healingCell))[0]?.[0];
  return after === acidValue
    ? green("healing", `${shown(before)} became its figure after ${String(healing.tries)} tries.`)
    : red("healing", `It showed ${shown(before)}, and after being mended ${shown(after)}.`);
}

const speedSheet = "Check speed";
const many = 1000;
/** Longer than this is to be looked at; it is no fault. */
const patience = 20_000;

const massOf = (row: number): number => 10 + row / many;

export async function thousandCells(tools: Tools): Promise<Seen> {
  const block = cellsAt(0, 0, many, 2, speedSheet);
  const rows = Array.from({ length: many }, (_, row) => [
    value(massOf(row)),
    formula(`=TITRE.ACIDVALUE(2.3,0.1,A${String(row + 1)})`),
  ]);
  const began = tools.now();
  await write(tools, { do: "add-sheet", name: speedSheet }, put(block, rows));
  await answered(tools, block);
  const took = tools.now() - began;
  const found = await read(tools, block);
  const wrong = found.filter(([, held], row) => {
    const wanted = (56.1 * 0.1 * 2.3) / massOf(row);
    return typeof held !== "number" || Math.abs(held - wanted) > 1e-9;
  });
  const words = `${String(many)} cells were written and answered in ${(took / 1000).toFixed(1)} s.`;
  if (wrong.length > 0) {
    return red(
      "speed",
      `${String(wrong.length)} of them show something else, as ${shown(wrong[0]?.[1])}. ${words}`,
    );
  }
  return took > patience ? amber("speed", words) : green("speed", words);
}
