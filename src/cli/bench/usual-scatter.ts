/** USUALSCATTER over a record of many titrations, and how its time grows with them. */
import { catalogue } from "../../functions/catalogue";
import type { Measure } from "./figure";
import { growthOf } from "./growth";

const entry = catalogue.find(({ id }) => id === "USUALSCATTER");

const reading = (row: number, at: number): number => (100 + ((row * 37 + at * 3) % 400)) / 100;

function record(rows: number): () => unknown {
  const titres = Array.from({ length: rows }, (_, row) =>
    [0, 1, 2].map((at) => reading(row, 0) + at / 100),
  );
  const blanks = titres.map(() => [0.15, 0.2]);
  return () => {
    const found = entry?.evaluate([titres, blanks]);
    if (typeof found !== "number") throw new Error("the bench worked out no scatter");
  };
}

export const usualScatter: Measure = {
  name: "usual scatter",
  run: () => growthOf("USUALSCATTER", record),
};
