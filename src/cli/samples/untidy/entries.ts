/**
 * Two hundred rows of an untidy logbook: typed from paper at first, then worked out by formulas, in some
 * of them wrongly. Which is wrong where stands in the tests.
 */
import { timeOfSerial } from "../../../sheet/serial-days";
import type { BookCell } from "../../../sheet/book";

/** The first entries were typed from paper. */
const lastTyped = 65;
const lastTextDate = 70;
export const entryCount = 200;
/** A line with the year stands before these. */
const yearsBefore: Readonly<Record<number, string>> = { 71: "2025", 141: "2026" };

/** Rows above the first entry: title, settings, headings. */
export const headingRow = 6;

/** The row of an entry, counted from 0. */
export const rowOfEntry = (entry: number): number =>
  headingRow + entry + Object.keys(yearsBefore).filter((first) => entry >= Number(first)).length;

type Formulas = Partial<
  Record<"average" | "net" | "ffa" | "kilograms" | "extra" | "total", (row: string) => string>
>;

interface Wrong {
  readonly from: number;
  readonly to?: number;
  readonly formulas: Formulas;
}

/** The right formulas; r is the row's number as written. */
const right = {
  average: (r: string) => `AVERAGE(D${r}:F${r})`,
  net: (r: string) => `H${r}-G${r}`,
  ffa: (r: string) => `K${r}/56.1*I${r}*28.2/J${r}`,
  kilograms: (r: string) => `M${r}*0.915`,
  extra: (r: string) => `O${r}*L${r}*10*56.1/282`,
  total: (r: string) => `(P${r}+$B$4*O${r}/0.915)/($B$3/100)`,
} as const;

const byCharge = { extra: (r: string) => `L${r}/100*$B$4*O${r}/0.915` };
const noAssay = { total: (r: string) => `P${r}+$B$4*O${r}/0.915` };

// prettier-ignore
const wrongs: readonly Wrong[] = [
  { from: 12, to: 13, formulas: { net: (r) => `H${r}` } },
  { from: 25, formulas: { net: (r) => `H${r}+G${r}` } },
  { from: 31, to: 36, formulas: byCharge },
  { from: 44, formulas: noAssay },
  { from: 45, formulas: { total: (r) => `$B$4*O${r}/0.915/($B$3/100)` } },
  { from: 52, formulas: { ffa: (r) => `K${r}/56.1*I${r}*25.6/J${r}` } },
  { from: 58, formulas: { total: (r) => `(P${r}+$B$4*O${r}/0.915)/($B$3/100)*1.17` } },
  { from: 66, to: 69, formulas: { average: (r) => `(D${r}+E${r}+F${r})/3` } },
  { from: 80, to: 89, formulas: byCharge },
  { from: 95, to: 99, formulas: { kilograms: (r) => `M${r}` } },
  { from: 104, to: 106, formulas: { ffa: (r) => `K${r}/56.1*I${r}*25.6/J${r}` } },
  { from: 110, to: 113, formulas: { ffa: (r) => `0.1*I${r}*28.2/J${r}` } },
  { from: 120, to: 124, formulas: { kilograms: (r) => `M${r}*3.785*0.915` } },
  { from: 125, to: 129, formulas: { kilograms: (r) => `M${r}*4.546*0.915` } },
  { from: 130, to: 133, formulas: noAssay },
  { from: 138, formulas: { total: (r) => `(P${r}+$B$4*O${r}/0.915)*($B$3/100)` } },
  { from: 145, to: 147, formulas: { extra: (r) => `O${r}*L${r}/100*10*56.1/282` } },
  { from: 150, to: 152, formulas: { extra: (r) => `O${r}*L${r}*10*40/282` } },
  { from: 170, to: 172, formulas: { net: (r) => `H${r}` } },
  { from: 180, formulas: { net: (r) => `H${r}+G${r}` } },
  { from: 190, to: 191, formulas: { ...byCharge, ...noAssay } },
];

const isIn = (entry: number, from: number, to = from): boolean => entry >= from && entry <= to;
const formulasOf = (entry: number): Record<keyof typeof right, (row: string) => string> => ({
  ...right,
  ...(Object.assign(
    {},
    ...wrongs.filter(({ from, to }) => isIn(entry, from, to)).map(({ formulas }) => formulas),
  ) as Formulas),
});

/** A seeded sequence: the same figures every time. */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

export interface OldEntry {
  readonly entry: number;
  readonly date: BookCell;
  readonly drum: string;
  readonly titres: readonly (number | undefined)[];
  readonly blank: number;
  readonly sample: BookCell;
  /** g/L */
  readonly strength: number;
  readonly amount: number;
  readonly unit: string;
  readonly formulas: Record<keyof typeof right, (row: string) => string>;
  readonly isTyped: boolean;
  readonly methanolPerUnit: number;
  /** Lye weighed out against what the row says: 1 but for one slip at the balance. */
  readonly weighedShare: number | undefined;
  readonly remark: string;
}

const remarks = [
  "",
  "",
  "",
  "",
  "dark",
  "bit of water, dried first",
  "",
  "smells of fish",
  "",
  "slow to settle",
];
const kitchens = ["NQ", "SW", "TW"];

const two = (value: number): string => String(value).padStart(2, "0");
/** 2024-01-08 is day 45299 of the spreadsheet's calendar. */
const firstDay = 45_299;

function dateOf(entry: number): BookCell {
  const day = firstDay + Math.round((entry - 1) * 4.7);
  if (entry > lastTextDate) return { value: day, format: "dd/mm/yyyy" };
  const date = new Date(timeOfSerial(day));
  return {
    value: `${two(date.getUTCDate())}.${two(date.getUTCMonth() + 1)}.${String(date.getUTCFullYear())}`,
  };
}

function entryOf(entry: number, random: () => number): OldEntry {
  const isWeak = isIn(entry, 110, 113);
  const strength = isWeak ? 1 : 5.61;
  const sample = Number((isWeak ? 1.8 + random() * 0.4 : 9.6 + random()).toFixed(2));
  const ffa = 0.5 + random() * 1.9;
  const blank = Number((0.1 + Math.floor(random() * 4) * 0.05).toFixed(2));
  const net = (ffa * sample) / (28.2 * (strength / 56.1));
  const read = (): number =>
    Number((Math.round((net + blank + (random() - 0.5) * 0.12) * 20) / 20).toFixed(2));
  const titres = [read(), read(), read()];
  const isGallons = isIn(entry, 120, 129);
  const litres = 80 + Math.floor(random() * 24) * 5;
  return {
    entry,
    date: dateOf(entry),
    drum: `${kitchens[Math.floor(random() * 3)] ?? "NQ"}-${String(100 + entry)}`,
    titres: isIn(entry, 66, 69) || entry % 23 === 7 ? [...titres.slice(0, 2), undefined] : titres,
    blank,
    sample: entry % 41 === 5 ? { value: `${String(sample)} g` } : { value: sample },
    strength,
    amount: isGallons ? Math.round(litres / 4.6) : litres,
    unit: isGallons ? "imp gal" : "l",
    formulas: formulasOf(entry),
    isTyped: entry <= lastTyped,
    methanolPerUnit: isGallons ? 1 : 0.22,
    weighedShare: entry === 160 ? 0.8 : entry % 16 === 3 ? undefined : 1,
    remark: remarks[Math.floor(random() * remarks.length)] ?? "",
  };
}

export function oldEntries(): OldEntry[] {
  const random = sequence(20_260_517);
  return Array.from({ length: entryCount }, (_, at) => entryOf(at + 1, random));
}

export const yearBefore = (entry: number): string | undefined => yearsBefore[entry];
