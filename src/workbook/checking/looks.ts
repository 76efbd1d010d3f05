/** Notes, lists and charts: written by the steps that every task uses, and counted by the program itself. */
import { type Decoration, isFault, type Step } from "../../sheet/port";
import { amber, green, type LineId, red, type Seen } from "./lines";
import { cellsAt, put, stoppedBy, type Tools, value } from "./tools";

const sheet = "Check looks";
const at = (row: number, column: number, rows = 1) => cellsAt(row, column, rows, 1, sheet);
const figures = [
  ["Litres", "Grams"],
  [50, 410],
  [100, 820],
  [150, 1230],
];

const steps: readonly Step[] = [
  { do: "add-sheet", name: sheet },
  put(
    cellsAt(0, 0, 4, 2, sheet),
    figures.map((row) => row.map(value)),
  ),
  { do: "add-note", block: at(0, 0), text: "A note of the check." },
  { do: "offer-words", block: at(1, 3), words: ["KOH", "NaOH"] },
  {
    do: "add-chart",
    sheet,
    kind: "lines",
    title: "A chart of the check",
    acrossTitle: "Litres",
    upTitle: "Grams",
    across: at(1, 0, 3),
    lines: [{ name: "one line", values: at(1, 1, 3) }],
    place: cellsAt(6, 0, 14, 6, sheet),
  },
];

const looked: readonly {
  id: LineId & ("notes" | "lists" | "charts");
  step: Decoration;
  one: string;
}[] = [
  { id: "notes", step: "add-note", one: "note" },
  { id: "lists", step: "offer-words", one: "list" },
  { id: "charts", step: "add-chart", one: "chart" },
];

export async function looks({ host, program }: Tools): Promise<readonly Seen[]> {
  const done = await host.write("Check this Excel", steps);
  if (isFault(done)) throw stoppedBy(done);
  const missing = done?.missing ?? [];
  const counted = await program.count(sheet);
  return looked.map(({ id, step, one }) => {
    if (missing.includes(step)) return red(id, `The ${one} was refused; the rest was written.`);
    const count = isFault(counted) ? undefined : counted[id];
    if (count === undefined)
      return amber(id, `The ${one} was taken; the program does not count it.`);
    return count === 1
      ? green(id, `The ${one} is there.`)
      : red(id, `The ${one} was taken, but the program counts ${String(count)}.`);
  });
}
