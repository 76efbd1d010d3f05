/** How a time grows with the rows: told for each size as microseconds a row, so that even is linear. */
import { type Figure, told } from "./figure";
import { byTurns, quietOf } from "./measure";

const sizes = [100, 1_000, 10_000, 100_000];

/** The largest size takes its time: fewer rounds are enough to see how it grows. */
const rounds = 2;

/** @param make what is to be timed, over so many rows; made ready before anything is timed */
export async function growthOf(
  what: string,
  make: (rows: number) => (() => unknown) | Promise<() => unknown>,
): Promise<Figure[]> {
  const pieces = [];
  for (const rows of sizes) pieces.push({ name: String(rows), run: await make(rows) });
  const timed = await byTurns(pieces, rounds);
  return sizes.map((rows) =>
    told(
      `${what}, ${rows.toLocaleString("en-GB")} rows`,
      (quietOf(timed, String(rows)) * 1000) / rows,
      "us a row",
      1,
    ),
  );
}
