/** The readings of a probe on a sheet of their own, with end point and slopes live beside them. */
import { fault, type Host, isFault } from "../../sheet/port";
import { cellAt } from "../../sheet/address";
import type { BookCell } from "../../sheet/book";
import { titrations } from "../tables/titrations";
import { carryOut } from "./carry-out";
import { finished } from "./finished";
import { readLogbook } from "./logbook/read-logbook";
import type { Confirmed, Plan, PlannedCell, RecordOutcome, Refusal } from "./plan";
import { freeSheetName } from "./plan-table";
import { plannedCell } from "./planned-cell";
import { refusal } from "./refusal";
import type { Pause } from "./settle";
import { contentOf, type PlainSheet, plainSheetSteps, wholeBlock } from "./sheet-steps";

export interface ProbeAsked {
  readonly lot: string;
  /** mL, and pH or mV. */
  readonly points: readonly (readonly [volume: number, reading: number])[];
}

const rowsAbove = 4;
/** Title, end point, a gap, headings; then the readings, and the slopes that spill beside them. */
function probeSheet(name: string, { lot, points }: ProbeAsked): PlainSheet {
  const last = rowsAbove + points.length;
  const columns = `A${String(rowsAbove + 1)}:A${String(last)},B${String(rowsAbove + 1)}:B${String(last)}`;
  const style = "calculated";
  // where the slopes spill to
  const spilled: BookCell = { format: "0.000", style };
  return {
    name,
    columnWidths: [15, 14, 4, 16, 14],
    rows: [
      [{ value: `Readings of a probe: ${lot || "no lot"}`, style: "title" }],
      [
        { value: "End point, mL", style: "words" },
        { formula: `=TITRE.ENDPOINT(${columns})`, format: "0.000", style },
      ],
      [],
      ["mL given", "pH or mV", "", "Middle, mL", "Slope"].map((value): BookCell => ({
        value,
        style: "heading",
      })),
      ...points.map(([volume, reading], at): (BookCell | null)[] => [
        { value: volume, style: "input", format: "0.00" },
        { value: reading, style: "input", format: "0.00" },
        null,
        at === 0 ? { formula: `=TITRE.STEEPNESS(${columns})`, format: "0.000", style } : spilled,
        spilled,
      ]),
    ],
  };
}

const plannedCells = ({ name, rows }: PlainSheet): PlannedCell[] =>
  rows.flatMap((row, at) =>
    row.flatMap((cell, column) => {
      if (!cell || (cell.formula === undefined && (cell.value ?? "") === "")) return [];
      const block = cellAt(name, at, column);
      return [
        plannedCell({ block, heading: "Reading", content: contentOf(cell), format: cell.format }),
      ];
    }),
  );

/** What making the sheet would do. Reads, never writes. */
export async function planProbe(host: Host, asked: ProbeAsked): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, titrations.name);
  if (isFault(snapshot)) return refusal(snapshot);
  if (snapshot.sheets.isProtected) return refusal(fault("workbook-protected"));
  const name = freeSheetName(snapshot, "Probe");
  const sheet = probeSheet(name, asked);
  return finished({
    what: "make the sheet",
    where: `the sheet ${name}`,
    summary: `A new sheet ${name}: ${String(asked.points.length)} readings, ENDPOINT and STEEPNESS of them, live.`,
    cells: plannedCells(sheet),
    makes: [`The sheet ${name}, with widths of its columns.`],
    remarks: [],
    block: wholeBlock(sheet),
    table: "",
    steps: [...plainSheetSteps(sheet), { do: "select", block: cellAt(name, 0, 0) }],
  });
}

/** Plans anew and writes only what was agreed to. */
export const writeProbe = (
  host: Host,
  asked: ProbeAsked,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(host, "Make the sheet of the probe", () => planProbe(host, asked), confirmed, pause);
