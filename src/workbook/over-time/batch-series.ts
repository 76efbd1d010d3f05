/** Batches in the order of time, from what How it went keeps: fuel made of the oil, and lye against acid. */
import { wentWords } from "../../core/batch/went";
import { counted } from "../../sheet/counted";
import { numberOf, type RecordedBatch } from "../planning/read-batches";
import { valueText } from "../planning/preview-text";
import { acidValueHeading } from "../tables/batch-cells";
import { chargeInFact, itWent, yieldHeading } from "../tables/went";
import { are, type Found, type Point, type Series } from "./series";

const fewest = 2;

interface Row {
  readonly batch: RecordedBatch;
  readonly day: number;
  readonly value: number;
}

/** Those that hold a figure and a day, the oldest first. */
const rowsWith = (all: readonly RecordedBatch[], heading: string): Row[] =>
  all
    .flatMap((batch) => {
      const value = numberOf(batch.under(heading));
      return value === undefined || batch.date === undefined
        ? []
        : [{ batch, day: batch.date, value }];
    })
    .sort((a, b) => a.day - b.day);

const nameOf = ({ batch: { batch, row } }: Row): string =>
  String(batch).trim() || `row ${String(row)}`;

const acidIn = ({ batch }: Row): number | undefined => numberOf(batch.under(acidValueHeading));

const acidOf = (row: Row): string => {
  const acid = acidIn(row);
  return acid === undefined ? "" : `acid value ${acid.toFixed(2)}`;
};

const tooFew = (
  shown: Pick<Series, "title" | "unit" | "what">,
  rows: readonly Row[],
  heading: string,
): Found => ({
  kind: "too few",
  ...shown,
  leftOut: [],
  sentence: `${counted(fewest - rows.length, "more batch", "more batches")} with a figure under ${heading} ${rows.length === 1 ? "makes" : "make"} a line: fill in How it went on the bench card.`,
});

/** Litres of fuel for 100 litres of oil. */
export function yieldSeries(all: readonly RecordedBatch[]): Found {
  const shown = { title: "Yield", unit: "% of the oil", what: "Litres of fuel" };
  const rows = rowsWith(all, yieldHeading);
  const last = rows.at(-1);
  if (rows.length < fewest || last === undefined) return tooFew(shown, rows, "Litres made");
  const values = rows.map(({ value }) => value);
  const points = rows.map((row): Point => ({
    day: row.day,
    value: row.value,
    of: nameOf(row),
    said: acidOf(row),
    isOut: false,
  }));
  return {
    kind: "series",
    across: "days",
    called: "Batch",
    ...shown,
    summary: "none",
    isOdd: false,
    leftOut: [],
    places: 1,
    points,
    lines: [],
    sentence: `100 L of oil gave ${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)} L of fuel; the last, ${nameOf(last)}, ${last.value.toFixed(1)} L.`,
    source: "Litres drawn off for 100 litres of oil at 20 °C.",
  };
}

/** Pure base that the acid left for the reaction, beside what was meant. */
export function chargeSeries(all: readonly RecordedBatch[]): Found {
  const shown = {
    title: "Lye against acid",
    unit: "% of the oil",
    what: "Pure base left for the reaction",
  };
  const rows = rowsWith(all, chargeInFact).filter(
    ({ batch }) => numberOf(batch.under("Charge %")) !== undefined,
  );
  const last = rows.at(-1);
  if (rows.length < fewest || last === undefined) return tooFew(shown, rows, "Weighed g");
  const isOff = ({ batch }: Row): boolean =>
    !valueText(batch.under(itWent)).startsWith(wentWords.asMeant);
  const off = rows.filter(isOff);
  const points = rows.map((row): Point => ({
    day: row.day,
    value: row.value,
    of: nameOf(row),
    said: acidOf(row),
    isOut: isOff(row),
  }));
  return {
    kind: "series",
    across: "days",
    called: "Batch",
    ...shown,
    summary: "none",
    isOdd: isOff(last),
    leftOut: [],
    places: 3,
    points,
    lines: [
      {
        name: "Charge meant",
        values: rows.map(({ batch }) => numberOf(batch.under("Charge %")) ?? Number.NaN),
      },
    ],
    against: {
      what: "Acid value of the oil",
      unit: "mg KOH/g",
      values: rows.map(acidIn),
      places: 2,
    },
    sentence:
      off.length === 0
        ? "Every batch had the lye for its reaction that was meant, whatever its acid."
        : `${off.map(nameOf).join(", ")} ${are(off.length)} off the charge that was meant: its row says what that means.`,
    source: "What was weighed, less what the acid took.",
  };
}
