/**
 * 10,000 cells that call TITRE, recalculated by the embedded engine after one input changed, against
 * as many cells of `A*B/C`.
 */
import { openHeadless } from "../../workbench/engine/node";
import type { CellPlace } from "../../sheet/area";
import type { Book, BookCell } from "../../sheet/book";
import { held, type Measure, told } from "./figure";
import { growthOf } from "./growth";
import { byTurns, quietOf } from "./measure";

const input = { sheet: "Bench", row: 0, column: 0 };

const bookOf = (count: number, formula: (row: number) => string): Book => ({
  name: "bench",
  sheets: [
    {
      name: input.sheet,
      rows: [
        [{ value: 0.1 }],
        ...Array.from({ length: count }, (_, at): BookCell[] => [
          { value: 2 + (at % 200) / 100 },
          { value: 7.05 },
          { formula: formula(at + 2) },
        ]),
      ],
      columnWidths: [],
      tables: [],
      frozenRows: 0,
    },
  ],
});

/** The workbook, and a way to type into one cell until the last formula shows another result. */
async function opened(count: number, formula: (row: number) => string) {
  const workbook = await openHeadless(bookOf(count, formula));
  const typed = async (place: CellPlace, figures: readonly [number, number]) => {
    const now = workbook.value(place) === figures[0] ? figures[1] : figures[0];
    await workbook.type(place, [[now]]);
    const last = workbook.value({ sheet: input.sheet, row: count, column: 2 });
    if (typeof last !== "number") throw new Error(`the bench computed ${JSON.stringify(last)}`);
  };
  return {
    /** Changes the one input that every formula reads. */
    all: () => typed(input, [0.1, 0.2]),
    /** Changes what one formula alone reads, the last. */
    one: () => typed({ sheet: input.sheet, row: count, column: 0 }, [2.4, 2.5]),
    close: () => workbook.close(),
  };
}

const builtIn = (row: number): string => `=A${String(row)}*A$1/B${String(row)}`;
const ours = (row: number): string => `=TITRE.ACIDVALUE(A${String(row)},A$1,B${String(row)})`;

async function run() {
  const plain = await opened(10_000, builtIn);
  const titre = await opened(10_000, ours);
  const timed = await byTurns(
    [
      { name: "plain", run: plain.all },
      { name: "titre", run: titre.all },
      { name: "one", run: titre.one },
    ],
    7,
  );
  plain.close();
  titre.close();
  const all = quietOf(timed, "titre");
  const what = "10,000 TITRE cells recalculated in the workbench";
  return [
    held(what, all / quietOf(timed, "plain"), 1.6, "x A*B/C"),
    told(what, all, "ms", 0),
    told("one of 10,000 TITRE cells recalculated", quietOf(timed, "one"), "ms", 0),
  ];
}

export const workbenchCells: Measure = { name: "workbench cells", run };

const grown = () =>
  growthOf("recalculation in the workbench", async (rows) => {
    const workbook = await opened(rows, ours);
    return workbook.all;
  });

export const workbenchGrowth: Measure = { name: "workbench growth", run: grown };
