/**
 * Which bench step to improve first: the uncertainty is worked out anew with one thing improved at a
 * time, and the change that lowers it most is named.
 */
import { computed } from "../exact/exact";
import { type BenchFigures, pooledFreedom } from "./bench";
import { expand } from "./expanded";
import { standardisedPercent } from "./phthalate";

export interface Change {
  /** Begins the sentence: "a 0.01 g balance". */
  readonly words: string;
  readonly bench: BenchFigures;
}

/** The largest test portion of AOCS Ca 5a-40, Table 1, g: no one titrates more oil at once. */
export const largestSample = 56.4;
/** The largest usual burette, mL (common practice, no source). */
export const largestTitre = 50;
/** Digits of what a standardisation reaches. */
export const digitsOfStandardised = 2;

const plain = (value: number, digits = 4): string =>
  computed(value).toSignificantDigits(digits).toFixed();

/** The words around figures as text: the plain-formula twin says them too. */
export const adviceWords = {
  balance: (step: string): string => `a ${step} g balance`,
  burette: (step: string): string => `a burette read to ${step} mL`,
  titre: "one more titre",
  blank: "one more blank",
  sample: (mass: string): string => `ten times the sample (${mass} g)`,
  titrant: (percent: string): string => `a titrant standardised to ±${percent} % on this balance`,
  bring: (change: string, from: string, to: string): string =>
    `${change} would bring ±${from} to ±${to} % FFA`,
  helpsLittle: (bring: string): string => `Nothing alone helps much: even ${bring}.`,
  helpsMost: (bring: string): string => `${bring}; nothing else helps as much.`,
};

const withCounts = (bench: BenchFigures, titres: number, blanks: number): BenchFigures => ({
  ...bench,
  titres,
  blanks,
  freedom:
    bench.freedom + pooledFreedom(titres, blanks) - pooledFreedom(bench.titres, bench.blanks),
  weighings: bench.weighings > 1 ? titres : bench.weighings,
});

/** A pipette off by so many mL is off by a tenth of the percent on ten times the volume. */
const tenfoldSample = (bench: BenchFigures): BenchFigures => ({
  ...bench,
  sampleMass: bench.sampleMass * 10,
  netTitre: bench.netTitre * 10,
  titre: bench.netTitre * 10 + bench.blank,
  samplePercent: bench.samplePercent / 10,
});

/** The changes open to this bench. The scatter of one titration is taken to stay as it is. */
export function changes(bench: BenchFigures): Change[] {
  const { titres, blanks, sampleMass, netTitre, blank } = bench;
  const open: Change[] = [
    {
      words: adviceWords.balance(plain(bench.massStep / 10)),
      bench: { ...bench, massStep: bench.massStep / 10 },
    },
    {
      words: adviceWords.burette(plain(bench.titreStep / 2)),
      bench: { ...bench, titreStep: bench.titreStep / 2 },
    },
    { words: adviceWords.titre, bench: withCounts(bench, titres + 1, blanks) },
  ];
  if (blanks > 0) {
    open.push({
      words: adviceWords.blank,
      bench: withCounts(bench, titres, blanks + 1),
    });
  }
  if (sampleMass * 10 <= largestSample && netTitre * 10 + blank <= largestTitre) {
    open.push({
      words: adviceWords.sample(plain(sampleMass * 10)),
      bench: tenfoldSample(bench),
    });
  }
  const standardised = standardisedPercent(bench);
  if (bench.molarityPercent > standardised) {
    open.push({
      words: adviceWords.titrant(plain(standardised, digitsOfStandardised)),
      bench: { ...bench, molarityPercent: standardised },
    });
  }
  return open;
}

export interface Advice {
  readonly words: string;
  readonly before: number;
  readonly after: number;
}

/** The change that lowers the expanded uncertainty most. There is always one. */
export function bestChange(bench: BenchFigures): Advice {
  const before = expand(bench).halfWidth;
  return changes(bench)
    .map((change) => ({ words: change.words, before, after: expand(change.bench).halfWidth }))
    .reduce((best, each) => (each.after < best.after ? each : best));
}

/** Two figures side by side, to two digits of the smaller. */
function sideBySide(before: number, after: number): [string, string] {
  const short = computed(after).toSignificantDigits(2);
  const places = short.decimalPlaces() + (short.precision() < 2 ? 1 : 0);
  return [computed(before).toFixed(places), computed(after).toFixed(places)];
}

/** Less than this part of the uncertainty gained is not worth the effort. */
export const worthwhile = 0.05;

/** @returns one sentence of at most 200 characters */
export function adviceInWords({ words, before, after }: Advice): string {
  const [from, to] = sideBySide(before, after);
  const bring = adviceWords.bring(words, from, to);
  return before - after < worthwhile * before
    ? adviceWords.helpsLittle(bring)
    : adviceWords.helpsMost(`${words[0]?.toUpperCase() ?? ""}${bring.slice(1)}`);
}
