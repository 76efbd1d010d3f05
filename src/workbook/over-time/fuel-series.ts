/** Acid, soap, metal and water of the finished fuel, batch by batch, against what the standards allow. */
import { counted } from "../../sheet/counted";
import type { Exact } from "../../core/exact/exact";
import { fuelEditions, fuelMost } from "../../core/reference/fuel-limits";
import type { FuelFigure, RecordedFuel } from "../planning/record/read-fuels";
import { are, type Found, type Point } from "./series";

interface Asked {
  readonly title: string;
  readonly what: string;
  readonly unit: string;
  readonly of: "acid" | "soap" | "metal" | "water";
  readonly limit: Exact | undefined;
  readonly source: string;
  readonly places: number;
}

const both = `${fuelEditions.en}; ${fuelEditions.astm}`;
const asked: readonly Asked[] = [
  {
    title: "Acid of the fuel",
    what: "Acid value",
    unit: "mg KOH/g",
    of: "acid",
    limit: fuelMost.acid,
    source: `Limit: ${both}.`,
    places: 3,
  },
  {
    title: "Soap in the fuel",
    what: "Soap",
    unit: "mg/kg",
    of: "soap",
    limit: undefined,
    source: "Soap has no limit of its own: the metal in it has.",
    places: 1,
  },
  {
    title: "Sodium or potassium in the fuel",
    what: "Metal",
    unit: "mg/kg",
    of: "metal",
    limit: fuelMost.metals,
    source: `Limit: ${both}.`,
    places: 2,
  },
  {
    title: "Water in the fuel",
    what: "Water",
    unit: "%",
    of: "water",
    limit: fuelMost.water,
    source: `Limit: ${fuelEditions.en}.`,
    places: 3,
  },
];

/** One batch is no line. */
const fewest = 2;

type Dated = RecordedFuel & { readonly day: number };
type Looked = Dated & { readonly figure: FuelFigure };

const isDated = (row: RecordedFuel): row is Dated => row.day !== undefined;

/** The last look at each batch, in the order of time; on one day, of the table. */
function lastOfEach(rows: readonly Looked[]): readonly Looked[] {
  const ordered = [...rows].sort((a, b) => a.day - b.day);
  const last = new Map(ordered.map((row) => [row.batch.toLowerCase(), row]));
  return ordered.filter((row) => last.get(row.batch.toLowerCase()) === row);
}

const isAbove = ({ value, verdict }: FuelFigure, limit: Exact | undefined): boolean =>
  limit !== undefined && (verdict === "" ? value > limit.toNumber() : verdict === "above");

function sentenceOf(rows: readonly Looked[], { limit, unit, places }: Asked): string {
  const figure = ({ figure: { value } }: Looked) => `${value.toFixed(places)} ${unit}`;
  const latest = rows.at(-1);
  if (latest === undefined) return "";
  if (limit === undefined) return `The last batch, ${latest.batch}, has ${figure(latest)}.`;
  const most = `${limit.toString()} ${unit}`;
  const out = rows.filter((row) => isAbove(row.figure, limit));
  const last = out.at(-1);
  if (last)
    return `${String(out.length)} of ${counted(rows.length, "batch", "batches")} ${are(out.length)} above ${most}, the last ${last.batch}: ${figure(last)}.`;
  const unsure = rows.filter((row) => row.figure.verdict === "cannot tell").length;
  return `None of ${counted(rows.length, "batch", "batches")} is above ${most}${unsure > 0 ? `; of ${String(unsure)} the ± cannot tell` : ""}.`;
}

const said = ({ value, verdict }: FuelFigure, limit: Exact | undefined): string =>
  verdict !== "" || limit === undefined
    ? verdict
    : isAbove({ value, verdict }, limit)
      ? "above, without a ±"
      : "not above, without a ±";

function seriesOf(all: readonly RecordedFuel[], about: Asked): Found {
  const { title, what, unit, of, limit, source, places } = about;
  const rows = all.flatMap((row) => {
    const figure = row[of];
    return figure === undefined ? [] : [{ ...row, figure }];
  });
  const washed = rows.filter(({ isUnwashed }) => !isUnwashed);
  const dated = washed.filter((row): row is Looked => isDated(row));
  const found = lastOfEach(dated);
  const left = (count: number, words: string): string[] =>
    count === 0 ? [] : [`${counted(count, "row")} ${words} ${are(count)} left out.`];
  const leftOut = [
    ...left(rows.length - washed.length, "of unwashed fuel"),
    ...left(washed.length - dated.length, "without a date"),
    ...left(dated.length - found.length, "of a batch looked at again"),
  ];
  const shown = { title, unit, what, leftOut };
  if (found.length < fewest) {
    const more = fewest - found.length;
    const sentence = `${counted(more, "more batch", "more batches")} ${more === 1 ? "makes" : "make"} a chart.`;
    return { kind: "too few", ...shown, sentence };
  }
  const points = found.map(({ day, batch, figure }): Point => ({
    day,
    of: batch,
    value: figure.value,
    said: said(figure, limit),
    isOut: isAbove(figure, limit),
  }));
  return {
    kind: "series",
    ...shown,
    across: "batches",
    called: "Batch",
    summary: "none",
    source,
    places,
    points,
    isOdd: points.some(({ isOut }) => isOut),
    lines:
      limit === undefined ? [] : [{ name: "At most", values: points.map(() => limit.toNumber()) }],
    sentence: sentenceOf(found, about),
  };
}

/** Acid, soap, metal, water; without a fuel on record what to do. */
export const fuelSeries = (all: readonly RecordedFuel[]): readonly Found[] =>
  all.length > 0
    ? asked.map((each) => seriesOf(all, each))
    : [
        {
          kind: "too few",
          title: "Finished fuel",
          unit: "",
          what: "",
          leftOut: [],
          sentence:
            "No fuel is on record yet: test one in Fuel, and its batches are compared here.",
        },
      ];
