/** What the workbench keeps of every change: a figure typed beside 5,000 formulas over blocks of cells. */
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { openHeadless } from "../../workbench/engine/node";
import type { BookCell } from "../../sheet/book";
import { type Measure, told } from "./figure";

const formulas = 5_000;
const changes = 30;

const row = (at: number): BookCell[] => [
  { value: 2.4 },
  { value: 2.5 },
  { formula: `=TITRE.CORRECTED(A${String(at + 1)}:B${String(at + 1)})` },
];

const book = {
  name: "memory",
  sheets: [
    {
      name: "Log",
      rows: Array.from({ length: formulas }, (_, at) => row(at)),
      columnWidths: [],
      tables: [],
      frozenRows: 0,
    },
  ],
};

async function run() {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const held = (): number => {
    collect();
    return process.memoryUsage().heapUsed;
  };
  const workbook = await openHeadless(book);
  const type = async (count: number) => {
    for (let change = 0; change < count; change += 1) {
      await workbook.type({ sheet: "Log", row: 9, column: 0 }, [[2 + change / 100]]);
    }
  };
  await type(10);
  const before = held();
  await type(changes);
  const kept = (held() - before) / changes / 1000;
  workbook.close();
  return [told("kept in memory of each change in the workbench", Math.max(0, kept), "kB", 0)];
}

export const workbenchMemory: Measure = { name: "workbench memory", run };
