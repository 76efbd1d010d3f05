/**
 * How cells arrive at a function: null or 0 for an empty cell, what for an error. The functions take all
 * of it; which it is differs by program, and is written down.
 */
import { type Cell, readCell } from "../../functions/cells/cell";
import { areaName, cellName } from "../../sheet/cell-name";
import { amber, green, red, type Seen, someOf } from "./lines";
import { answered, cellsAt, formula, keep, put, type Tools, value, write } from "./tools";

interface Probe {
  readonly what: string;
  readonly holds?: string | number | boolean;
  readonly formulaHolds?: string;
  /** With B for its cell and N for a number by which its call is known again. */
  readonly formula: string;
  /** Which argument is looked at. */
  readonly place: number;
  /** As what it must be read; where several will do, each. */
  readonly kinds: readonly Cell["kind"][];
}

const column = 5;
const inCell = "=TITRE.ACIDVALUE(N,0.1,B)";
const ofCell = { formula: inCell, place: 2 };

/** The range is the cells of the first four. */
const rangeOf = areaName({ row: 0, column, rows: 4, columns: 1 });

const probes: readonly Probe[] = [
  { what: "a figure", holds: 10, ...ofCell, kinds: ["number"] },
  { what: "an empty cell", ...ofCell, kinds: ["empty", "left-out"] },
  { what: "a nought", holds: 0, ...ofCell, kinds: ["empty"] },
  { what: "an empty text", formulaHolds: '=""', ...ofCell, kinds: ["empty", "left-out"] },
  { what: "a text", holds: "ten", ...ofCell, kinds: ["text"] },
  { what: "TRUE", holds: true, ...ofCell, kinds: ["boolean"] },
  { what: "#N/A", formulaHolds: "=NA()", ...ofCell, kinds: ["error"] },
  { what: "#DIV/0!", formulaHolds: "=1/0", ...ofCell, kinds: ["error"] },
  {
    what: "a range",
    formula: `=TITRE.CORRECTED({N},${rangeOf})`,
    place: 1,
    kinds: ["number", "empty", "left-out"],
  },
  {
    what: "an argument left out",
    formula: "=TITRE.FFAFROMACIDVALUE(N)",
    place: 1,
    kinds: ["left-out", "empty"],
  },
  {
    what: "an argument left empty",
    formula: "=TITRE.FFAFROMACIDVALUE(N,)",
    place: 1,
    kinds: ["left-out", "empty"],
  },
];

/** Numbers that no other formula of the check gives first. */
const markOf = (row: number): number => 71 + row / 100;

const firstOf = (given: unknown): unknown =>
  Array.isArray(given) ? firstOf((given as unknown[])[0]) : given;

/** As it arrived, in few words. One cell may arrive as a range of one. */
function asArrived(given: unknown): string {
  if (Array.isArray(given)) return `[${given.map(asArrived).join(", ")}]`;
  if (typeof given === "object" && given !== null) {
    const { type, code, basicValue, functionName } = given as Record<string, unknown>;
    if (functionName !== undefined) return "{the call itself}";
    return `{${[type, code ?? basicValue].filter((each) => each !== undefined).join(" ")}}`;
  }
  return typeof given === "string" ? JSON.stringify(given) : String(given);
}

const isReadRight = (given: unknown, { kinds }: Probe): boolean =>
  Array.isArray(given)
    ? given.every((each) => isReadRight(each, { kinds } as Probe))
    : kinds.includes(readCell(given).kind);

export async function howCellsArrive(tools: Tools): Promise<Seen> {
  const heard = new Map<number, readonly unknown[]>();
  const stop = tools.program.listen((_, given) => {
    const first = firstOf(given);
    if (typeof first === "number") heard.set(first, given);
  });
  try {
    const block = cellsAt(0, column, probes.length, 2);
    const contents = probes.map(({ holds, formulaHolds, formula: text }, row) => [
      formulaHolds === undefined
        ? holds === undefined
          ? keep
          : value(holds)
        : formula(formulaHolds),
      formula(text.replace(/\bN\b/, String(markOf(row))).replace(/\bB\b/, cellName(row, column))),
    ]);
    await write(tools, put(block, contents));
    await answered(tools, block);
  } finally {
    stop();
  }
  const arrived = probes.map((probe, row) => {
    const given = heard.get(markOf(row));
    return given && { probe, given: given[probe.place] };
  });
  const found = arrived.filter((each) => each !== undefined);
  if (found.length === 0) {
    return amber("arrivals", "No call was heard: the functions run where the pane cannot listen.");
  }
  const words = found.map(({ probe, given }) => `${probe.what}: ${asArrived(given)}`).join("; ");
  const wrong = found.filter(({ probe, given }) => !isReadRight(given, probe));
  if (wrong.length > 0) {
    return red("arrivals", `Misread: ${someOf(wrong.map(({ probe }) => probe.what))}. ${words}`);
  }
  return found.length === probes.length
    ? green("arrivals", words)
    : amber("arrivals", `Not all were heard. ${words}`);
}
