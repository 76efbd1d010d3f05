/**
 * What a titration under way should hold, kept as a person with a pencil would: independent of the
 * pane's reducer, and compared with its draft after every act.
 */
import type { Draft, Reading } from "../../src/taskpane/titrate/draft";
import { type Acid, acidByHand, type BaseByHand, molarityByHand } from "./by-hand";

export interface Slip {
  readonly id: string;
  typed: Record<string, string>;
  picked: Record<string, string>;
  lot: string;
  note: string;
  titres: Reading[];
  blanks: Reading[];
  isRecorded: boolean;
}

export const emptySlip = (id: string): Slip => ({
  id,
  typed: {},
  picked: { base: "KOH", way: "molarity", masses: "one", blank: "", reading: "used" },
  lot: "",
  note: "",
  titres: [],
  blanks: [],
  isRecorded: false,
});

export const copyOf = (slip: Slip): Slip => structuredClone(slip);

const ofTheBench = /^(molarity|gramsPerLitre|assay|certified|titreStep|massStep|strengthPercent)$/;

/** The next one on the same bench: strength, burette and balance stay, readings do not. */
export const nextSlip = (id: string, { typed, picked }: Slip): Slip => ({
  ...emptySlip(id),
  typed: Object.fromEntries(Object.entries(typed).filter(([field]) => ofTheBench.test(field))),
  picked: { ...picked, blank: "" },
});

const filled = (typed: Readonly<Record<string, string | undefined>>): string[][] =>
  Object.entries(typed)
    .flatMap(([field, text]) => (text === undefined || text === "" ? [] : [[field, text]]))
    .sort();

/** A reading as written on paper, its parts in one order. */
const written = ({ used, start, end, mass, omitted }: Reading): (string | undefined)[] => [
  used,
  start,
  end,
  mass,
  omitted,
];

/** Model and draft in one form, to be compared. */
export const ofSlip = (slip: Slip): string =>
  JSON.stringify([
    filled(slip.typed),
    ["base", "way", "masses", "blank", "reading"].map((pick) => slip.picked[pick]),
    slip.lot,
    slip.note,
    slip.titres.map(written),
    slip.blanks.map(written),
    slip.isRecorded,
  ]);

export const ofDraft = ({ typed, picked, words, titres, blanks, isRecorded }: Draft): string =>
  JSON.stringify([
    filled(typed),
    [picked.base, picked.way, picked.masses, picked.blank, picked.reading],
    words.lot,
    words.note,
    titres.map(written),
    blanks.map(written),
    isRecorded,
  ]);

const number = (text: string | undefined): number | undefined =>
  text === undefined || text === "" ? undefined : Number(text.replace(",", "."));

export function molarityOf({ typed, picked }: Slip): number | undefined {
  const { way = "" } = picked;
  if (way !== "gramsPerLitre") return number(typed[way]);
  const [grams, assay] = [number(typed.gramsPerLitre), number(typed.assay)];
  return grams === undefined || assay === undefined
    ? undefined
    : molarityByHand(grams, assay, picked.base as BaseByHand);
}

const standing = (readings: readonly Reading[]): Reading[] =>
  readings.filter(({ omitted }) => omitted === undefined);

/** Masses of the titres that count; undefined while one is missing. */
function massesOf({ typed, picked, titres }: Slip): number[] | undefined {
  const masses = standing(titres).map(({ mass }) =>
    number(picked.masses === "own" ? mass : typed.mass),
  );
  return masses.every((mass) => mass !== undefined) ? masses : undefined;
}

/** "missing" while a figure is not there; undefined where the figures contradict each other. */
export function acidOf(slip: Slip): Acid | undefined | "missing" {
  const [molarity, masses] = [molarityOf(slip), massesOf(slip)];
  const titres = standing(slip.titres).map(({ used }) => Number(used));
  const blanks =
    slip.picked.blank === "titrated" ? slip.blanks.map(({ used }) => Number(used)) : [];
  const hasBlank = slip.picked.blank === "neutralised" || blanks.length > 0;
  if (molarity === undefined || masses === undefined || titres.length === 0 || !hasBlank) {
    return "missing";
  }
  return acidByHand({ molarity, titres, blanks, masses });
}
