/**
 * 10,000 cells that call TITRE, recalculated by the embedded engine after one input changed, against
 * as many cells of `A*B/C`.
 */
import { openHeadless } from "../../workbench/engine/node";
import type { Book, BookCell } from "../../workbook/book";
import { type Figure, held, told } from "./figure";
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

/** Changes the one input that every formula reads; answers the last result. */
async function recalculating(count: number, formula: (row: number) => string) {
  const workbook = await openHeadless(bookOf(count, formula));
  let strength = 0.1;
  return {
    async run() {
      strength = strength === 0.1 ? 0.2 : 0.1;
      await workbook.type(input, [[strength]]);
      const last = workbook.value({ sheet: input.sheet, row: count, column: 2 });
      if (typeof last !== "number") throw new Error(`the bench computed ${JSON.stringify(last)}`);
    },
    close() {
      workbook.close();
    },
  };
}

const builtIn = (row: number): string => `=A${String(row)}*A$1/B${String(row)}`;
const ours = (row: number): string => `=TITRE.ACIDVALUE(A${String(row)},A$1,B${String(row)})`;

async function ratioOf(count: number, rounds: number) {
  const plain = await recalculating(count, builtIn);
  const titre = await recalculating(count, ours);
  const timed = await byTurns(
    [
      { name: "plain", run: plain.run },
      { name: "titre", run: titre.run },
    ],
    rounds,
  );
  plain.close();
  titre.close();
  return { plain: quietOf(timed, "plain"), titre: quietOf(timed, "titre") };
}

export async function workbenchCells(): Promise<Figure[]> {
  const whole = await ratioOf(10_000, 7);
  const what = "10,000 TITRE cells recalculated in the workbench";
  return [held(what, whole.titre / whole.plain, 1.6, "x A*B/C"), told(what, whole.titre, "ms", 0)];
}
