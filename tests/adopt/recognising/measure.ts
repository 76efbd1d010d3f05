/** How many columns the recogniser gets right by itself. */
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { layoutCount, makeLogbook, type Part } from "./logbooks";

export interface Miss {
  readonly logbook: string;
  readonly heading: string;
  readonly wanted: string;
  readonly got: string;
  readonly seed: number;
}

export interface Measured {
  readonly columns: number;
  readonly right: number;
  readonly misses: readonly Miss[];
}

export function measureOne(index: number, part: Part, seed: number): Measured {
  const made = makeLogbook(index, part, seed);
  const tables = recogniseSheet(made.cells);
  const misses: Miss[] = [];
  for (const { column, headingRow, role, heading } of made.truth) {
    const table = tables.find(
      ({ place }) =>
        place.headingRow === headingRow &&
        column >= place.firstColumn &&
        column <= place.lastColumn,
    );
    const got = table?.columns.find((each) => each.column === column)?.role ?? "no table";
    if (got !== role) misses.push({ logbook: made.name, heading, wanted: role, got, seed });
  }
  return { columns: made.truth.length, right: made.truth.length - misses.length, misses };
}

export function measure(part: Part, seeds: readonly number[]): Measured {
  const all = seeds.flatMap((seed) =>
    Array.from({ length: layoutCount }, (_, index) => measureOne(index, part, seed)),
  );
  return {
    columns: all.reduce((sum, { columns }) => sum + columns, 0),
    right: all.reduce((sum, { right }) => sum + right, 0),
    misses: all.flatMap(({ misses }) => misses),
  };
}
