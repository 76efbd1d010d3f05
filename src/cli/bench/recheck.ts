/**
 * Logbooks of many rows re-checked, however they are headed and laid out: 10,000 rows against the budget,
 * each layout against a plain one, and how the time grows.
 */
import { recheckAtOnce } from "../../adopt/recheck/recheck";
import { type Figure, held, type Measure, told } from "./figure";
import { byTurns, quietOf } from "./measure";
import { type Layout, layouts, logbookOf } from "./recheck-books";
import { workedRow } from "./recheck-rows";

const sizes = [100, 1_000, 10_000];
const budgeted = 10_000;
const large = 10 * budgeted;

/** A layout may cost so many times what the plain one costs. */
const mostBeside = 2;

const rechecked = (layout: Layout, rows: number) => {
  const book = logbookOf(
    layout,
    Array.from({ length: rows }, (_, at) => workedRow(at)),
  );
  return () => recheckAtOnce([book]);
};

/** Once: the small ones have warmed it up, and it takes its time. */
function onceIn(run: () => unknown): number {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

async function run(): Promise<Figure[]> {
  const [plain] = layouts;
  if (!plain) throw new Error("there is no plain logbook");
  const bySize = await byTurns(
    sizes.map((rows) => ({ name: String(rows), run: rechecked(plain, rows) })),
    3,
  );
  const byLayout = await byTurns(
    layouts.map((layout) => ({ name: layout.name, run: rechecked(layout, budgeted) })),
    3,
  );
  const quiet = ({ name }: Layout): number => quietOf(byLayout, name);
  return [
    held("re-check of 10,000 rows", quiet(plain) / 1000, 2, "s"),
    ...layouts.flatMap((layout) => [
      ...(layout === plain
        ? []
        : [
            held(
              `10,000 ${layout.name}`,
              quiet(layout) / quiet(plain),
              mostBeside,
              "x a plain logbook",
            ),
          ]),
      held(
        `100,000 rows against 10,000, ${layout.name}`,
        onceIn(rechecked(layout, large)) / quiet(layout),
        15,
        "x the time",
        1,
      ),
    ]),
    ...sizes.map((rows) =>
      told(
        `re-check, ${rows.toLocaleString("en-GB")} rows`,
        (quietOf(bySize, String(rows)) * 1000) / rows,
        "us a row",
        1,
      ),
    ),
  ];
}

export const recheckOfRows: Measure = { name: "re-check", run };
