/** My bench into the workbook: its sheet made, or the values of its table changed. */
import { counted } from "../../../sheet/counted";
import { cellAt } from "../../../sheet/address";
import type { BookTable } from "../../../sheet/book";
import { type Block, type Host, isFault, type Step } from "../../../sheet/port";
import {
  type BenchId,
  benchIds,
  benchSettings,
  type BenchSetting,
  benchSheetName,
  benchTable,
  type BenchValues,
} from "../../tables/bench";
import { benchCell, benchSheet } from "../../tables/bench-sheet";
import { carryOut } from "../carry-out";
import { changedBench } from "./change-bench";
import { finished } from "../finished";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { freeSheetName, hindrance } from "../plan-table";
import { plannedCell } from "../planned-cell";
import { read, readTable } from "../read";
import { refusal } from "../refusal";
import type { Pause } from "../settle";
import { sheetSteps, tableBlock } from "../sheet-steps";

const content = (id: BenchId, values: BenchValues) =>
  ({ kind: "value", value: benchCell(id, values[id] ?? "") }) as const;

const what = "keep my bench";

function newSheet(values: BenchValues, name: string): Plan {
  const sheet = { ...benchSheet(values), name };
  const [table] = sheet.tables as [BookTable];
  const block = tableBlock(sheet, table);
  const cellOf = (at: number): Block => cellAt(name, block.row + 1 + at, 1);
  const filled = benchIds.filter((id) => (values[id] ?? "") !== "");
  return finished({
    what,
    where: `the sheet ${name}`,
    summary: `A new sheet ${name}: ${String(filled.length)} of ${counted(benchIds.length, "setting")} filled in.`,
    cells: benchIds.flatMap((id, at) =>
      filled.includes(id)
        ? plannedCell({
            block: cellOf(at),
            heading: benchSettings[id].name,
            content: content(id, values),
          })
        : [],
    ),
    makes: [
      `The sheet ${name} with the table ${benchTable}: a row for each setting, with a list where it has words.`,
    ],
    remarks: [],
    block,
    table: benchTable,
    steps: [
      ...sheetSteps(sheet, table),
      ...benchIds.flatMap((id, at): Step[] => {
        const { words }: BenchSetting = benchSettings[id];
        return words === undefined ? [] : [{ do: "offer-words", block: cellOf(at), words }];
      }),
    ],
  });
}

/** What keeping these values would do. Reads, never writes. */
export async function planBench(host: Host, values: BenchValues): Promise<Plan | Refusal> {
  const known = await readTable(host, benchTable);
  if (isFault(known)) return refusal(known);
  if (known) return changedBench(known, values);
  const found = await read(host, [{ ask: "sheets" }, { ask: "names" }]);
  if (isFault(found)) return refusal(found);
  const [sheets, names] = found;
  const stopped = hindrance({ sheets, names }, { name: benchTable });
  if (stopped) return stopped;
  return newSheet(values, freeSheetName({ sheets }, benchSheetName));
}

/** Plans anew and writes only what was agreed to. */
export const keepBench = (
  host: Host,
  values: BenchValues,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(host, "Keep my bench", () => planBench(host, values), confirmed, pause);
