/** Of a column of which no word is known: what of a titration its figures can only be. */
import { sameWords } from "../context";
import type { RoleId } from "../roles";
import {
  each,
  type Figures,
  isAlike,
  isBetween,
  isOneFigure,
  isVaried,
  ratioOf,
  spreadOf,
  valuesOf,
} from "./figures";
import {
  acidValueOf,
  gramsOf,
  type KnownTable,
  meanOf,
  molaritiesOf,
  netOf,
  readOf,
  type Unnamed,
} from "./known-table";

export type Rule = (given: Unnamed, table: KnownTable) => readonly RoleId[];

/** Rounded to two digits or three. */
const near = 0.03;
const half = 0.006;

/** mg KOH/g, worked out from the readings. */
function workedAcid(t: KnownTable): readonly Figures[] {
  const [net, grams] = [netOf(t), gramsOf(t)];
  if (!net || !grams) return [];
  const perGram = each(net, grams, (a, b) => a / b);
  return molaritiesOf(t).map((molarity) => each(perGram, molarity, (a, b) => 56.1 * a * b));
}

/** What a mean of several titres is, and no other column. */
const mean: Rule = ({ own }, t) => {
  const titres = t.all("titre");
  const should = titres.length >= 2 ? meanOf(titres) : undefined;
  return should && isVaried(own) && isAlike(own, should, 0.004, half) ? ["meanTitre"] : [];
};

const net: Rule = ({ own }, t) => {
  const [read, blank] = [readOf(t), meanOf(t.all("blank"))];
  const should = read && blank && each(read, blank, (a, b) => a - b);
  if (!should || !isVaried(own) || !isAlike(own, should, 0.004, half)) return [];
  // of a gram with 1 g/L the acid value is the same figure
  const mayBeAcid = !t.has("acidValue") && molaritiesOf(t).length === 0;
  const portion = Math.max(...valuesOf(gramsOf(t) ?? [0]));
  return mayBeAcid && portion < 5 ? [] : ["correctedTitre"];
};

/** What the net titre lacks; else what is small and of its own in each row, where no other column is the blank. */
const blank: Rule = ({ own }, t) => {
  const read = readOf(t);
  if (!read || t.has("blank")) return [];
  const left = t.of("correctedTitre");
  if (left) {
    const should = each(read, left, (a, b) => a - b);
    return isAlike(own, should, 0.02, half) ? ["blank"] : [];
  }
  const [acid, grams] = [t.of("ffa") ?? t.of("acidValue"), gramsOf(t)];
  if (!acid) return [];
  const sample = grams ?? read.map(() => 1);
  const without = each(
    each(read, own, (a, b) => a - b),
    sample,
    (a, b) => a / b,
  );
  const plain = each(read, sample, (a, b) => a / b);
  // small, and the acid goes by what is left without it more than by the whole titre
  const isTold = isVaried(own) || t.has("molarity") || t.has("strength");
  return isTold &&
    isBetween(own, read, [0.001, 0.5]) &&
    ratioOf(acid, without, 0.015) !== undefined &&
    spreadOf(acid, without) < 0.7 * spreadOf(acid, plain)
    ? ["blank"]
    : [];
};

/** Numbered alike, and alike row by row: readings of one thing. */
export const isReplicate = ({ candidate, own }: Unnamed, all: readonly Unnamed[]): boolean =>
  candidate.parts.number !== undefined &&
  isVaried(own) &&
  all.some((each) => sameWords(candidate, each.candidate) && isAlike(own, each.own, 0.06, 0.35));

/** The one titre: the acid goes by it less the blank. */
const titre: Rule = ({ own }, t) => {
  if (readOf(t) || !isVaried(own)) return [];
  const left = t.of("correctedTitre");
  const blanks = meanOf(t.all("blank"));
  if (left && blanks)
    return isAlike(
      own,
      each(left, blanks, (a, b) => a + b),
      0.004,
      half,
    )
      ? ["titre"]
      : [];
  const [acid, grams] = [t.of("ffa") ?? t.of("acidValue"), gramsOf(t)];
  if (!acid || !blanks || left) return [];
  const without = each(own, blanks, (a, b) => a - b);
  const perGram = grams ? each(without, grams, (a, b) => a / b) : without;
  const plain = grams ? each(own, grams, (a, b) => a / b) : own;
  return ratioOf(acid, perGram, 0.015) !== undefined && ratioOf(acid, plain, 0.015) === undefined
    ? ["titre"]
    : [];
};

/** By the readings; or by the other of both, since one is half of the other. */
const acid: Rule = ({ own }, t) => {
  if (!isVaried(own)) return [];
  const found: RoleId[] = [];
  const worked = workedAcid(t);
  if (worked.some((should) => isAlike(own, should, near, half))) found.push("acidValue");
  const percent = worked.map((figures) => figures.map((value) => value && value * 0.5027));
  if (percent.some((should) => isAlike(own, should, near, half))) found.push("ffa");
  if (found.length > 0) return found;
  const known = t.of("acidValue");
  const ffa = t.of("ffa");
  if (
    known &&
    isAlike(
      own,
      known.map((value) => value && value * 0.5027),
      0.015,
      half,
    )
  )
    return ["ffa"];
  const of = acidValueOf(t);
  return ffa && of && isAlike(own, of, 0.015, 0.012) ? ["acidValue"] : [];
};

/** What the acid and the titres leave for the sample, in grams or millilitres. */
const sample: Rule = ({ own }, t) => {
  if (gramsOf(t)) return [];
  const [net, value] = [netOf(t), acidValueOf(t)];
  if (!net || !value) return [];
  const perMole = each(net, value, (a, b) => (56.1 * a) / b);
  const grams = molaritiesOf(t).map((molarity) => each(perMole, molarity, (a, b) => a * b));
  const is = (scale: number): boolean =>
    grams.some((should) =>
      isAlike(
        own,
        should.map((each) => each && each * scale),
        near,
      ),
    );
  return [
    ...(is(1) ? (["sampleMass"] as const) : []),
    ...(is(1 / 0.915) ? (["sampleVolume"] as const) : []),
  ];
};

/** As much as was asked for, a little more or less: it was weighed. */
const portions = [1, 2, 2.5, 5, 10, 20, 25];
const weighedSample: Rule = ({ own, candidate }, t) => {
  if (gramsOf(t) || !readOf(t) || !isVaried(own)) return [];
  const values = valuesOf(own);
  const digits = values.filter((value) => !Number.isInteger(value * 10)).length;
  const isNear = portions.some((portion) =>
    values.every((value) => Math.abs(value / portion - 1) <= 0.1),
  );
  return isNear && digits > values.length / 3 && candidate.facts.dates === 0 ? ["sampleMass"] : [];
};

/** What acid, titres and sample leave for the burette. */
const strength: Rule = ({ own }, t) => {
  if (t.has("molarity") || t.has("strength") || !isOneFigure(own)) return [];
  const [net, value, grams] = [netOf(t), acidValueOf(t), gramsOf(t)];
  if (!net || !value || !grams) return [];
  const perGram = each(net, grams, (a, b) => a / b);
  const moles = each(value, perGram, (a, b) => a / b / 56.1);
  const is = (mass: number): boolean =>
    isAlike(
      moles,
      own.map((each) => each && each / mass),
      0.04,
    );
  if (is(1)) return ["molarity"];
  return is(56.1) || is(40) ? ["strength"] : [];
};

export const titrationRules: readonly Rule[] = [
  mean,
  net,
  blank,
  titre,
  acid,
  sample,
  weighedSample,
  strength,
];
