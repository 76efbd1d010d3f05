/**
 * Everything that follows from the readings so far: the mean and the verdict as soon as there is a
 * reading, the acid as soon as mass and strength are known, its doubt as soon as the steps are.
 */
import { neutralisedWord } from "../../core/titration/neutralised";
import { mean } from "../../core/exact/lists";
import type { Exact } from "../../core/exact/exact";
import {
  type AcidValue,
  type Gram,
  type Millilitre,
  type Percent,
} from "../../core/quantity/quantity";
import { isProblem, type Outcome } from "../../core/problem/problem";
import { type Judgement as Found, judgement, type Mark } from "../../core/replicates/judgement";
import { shownMarks } from "../../core/replicates/named-reading";
import { type Beside, replicateSet, type ReplicateSet } from "../../core/replicates/outlier-test";
import { type Scatter, scatterOf } from "../../core/replicates/spread";
import { verdict } from "../../core/replicates/verdict";
import { correctedTitre } from "../../core/titration/corrected-titre";
import { ffaFromAcidValue } from "../../core/titration/free-fatty-acid";
import { eachAcidValue, meanAcidValue, type Replicate } from "../../core/titration/mean-acid-value";
import { benchFigures, type BenchFigures } from "../../core/uncertainty/bench";
import { expand } from "../../core/uncertainty/expanded";
import { oleic } from "../../core/reference/fatty-acids";
import { usual as usually } from "../../core/reference/defaults";
import type { UsualScatter } from "../../core/record/pooled-scatter";
import type { OnRecord } from "../../workbook/planning/read-titrations";
import type { Draft } from "./draft";
import { asInCell } from "../fields/number-figures";
import type { Figures } from "./figures";
import { type Standing, standing, standingBlanks } from "./readings";
import { hasOwnMasses, massStepOf, oneMass } from "./sample";
import { type Strength, strengthOf } from "./strength";
import { type Usual, usualOf } from "./usual/usual-scatter";

export interface Judgement {
  readonly set: ReplicateSet;
  /** What the core says of it. */
  readonly found: Found;
  readonly mean: Exact;
  readonly scatter: Scatter | undefined;
  readonly verdict: string;
  /** What each reading is, by its number on the slip. */
  readonly marks: ReadonlyMap<number, Mark>;
  /** Two or more, and none of them suspect or apart. */
  readonly agrees: boolean;
}

export interface Acid {
  readonly correctedTitre: Millilitre;
  readonly acidValue: AcidValue;
  readonly ffa: Percent;
  /** % FFA of each titre that counts, in order. */
  readonly each: readonly Percent[];
}

export interface Doubt {
  readonly bench: BenchFigures;
  /** Half-width of the 95 % interval, % FFA. */
  readonly halfWidth: number;
}

export interface Working {
  readonly strength: Strength | undefined;
  /** How this hand scattered before, where it is to be used. */
  readonly usual: UsualScatter | undefined;
  /** What the record says, used or not; undefined while it cannot say anything. */
  readonly record: Usual | undefined;
  /** Today scatters more than the record explains: today's readings count alone. */
  readonly scattersMore: boolean;
  readonly titres: readonly Standing[];
  readonly blanks: readonly Millilitre[];
  readonly judgement: Judgement | undefined;
  /** Undefined while a figure is missing; a problem when the figures contradict each other. */
  readonly acid: Outcome<Acid> | undefined;
  readonly doubt: Doubt | undefined;
}

/** Each titre that counts with its mass; undefined while a mass is missing. */
function replicatesOf(titres: readonly Standing[], one: Gram | undefined): Replicate[] | undefined {
  const paired: Replicate[] = [];
  for (const { titre, mass } of titres) {
    const own = mass ?? one;
    if (own === undefined) return undefined;
    paired.push([titre, own]);
  }
  return paired.length === 0 ? undefined : paired;
}

function judge(
  titres: readonly Standing[],
  step: Millilitre | undefined,
  beside: Beside,
): Judgement | undefined {
  if (titres.length === 0) return undefined;
  const set = replicateSet(
    titres.map(({ titre }) => titre),
    step,
    usually.confidence,
    beside,
  );
  const found = judgement(set);
  const { marks } = found;
  const flags = shownMarks(set, found);
  return {
    set,
    found,
    mean: mean(set.readings),
    scatter: scatterOf(set),
    verdict: verdict(set, found),
    marks: new Map(titres.map(({ number }, place) => [number, flags[place] ?? "not tested"])),
    agrees: marks.every((mark) => mark === "agrees"),
  };
}

function acidOf(
  replicates: readonly Replicate[],
  blanks: readonly Millilitre[],
  strength: Strength,
): Outcome<Acid> {
  const net = correctedTitre(
    replicates.map(([titre]) => titre),
    blanks,
  );
  if (isProblem(net)) return net;
  const acidValue = meanAcidValue(replicates, blanks, strength.molarity);
  if (isProblem(acidValue)) return acidValue;
  // the row works % FFA out from the cell that holds the acid value
  const ffa = ffaFromAcidValue(asInCell("mg KOH/g", acidValue));
  if (isProblem(ffa)) return ffa;
  const values = eachAcidValue(replicates, blanks, strength.molarity);
  if (isProblem(values)) return values;
  const each: Percent[] = [];
  for (const own of values) {
    const percent = own === null ? undefined : ffaFromAcidValue(own);
    if (isProblem(percent)) return percent;
    if (percent !== undefined) each.push(percent);
  }
  return { correctedTitre: net, acidValue, ffa, each };
}

const isBlankSettled = (draft: Draft): boolean =>
  draft.picked.blank === neutralisedWord || standingBlanks(draft).length > 0;

/** @param onRecord the titrations in the workbook; undefined while nobody has read them */
export function workingOf(draft: Draft, figures: Figures, onRecord?: OnRecord): Working {
  const strength = strengthOf(draft, figures);
  const titreStep = figures.in("mL", "titreStep");
  const record = usualOf(onRecord, draft, strength, titreStep);
  const usual = draft.picked.record === "use" ? record?.scatter : undefined;
  const titres = standing(draft);
  const blanks = standingBlanks(draft);
  const found = oneMass(draft, figures);
  const one = isProblem(found) ? undefined : found;
  const replicates = replicatesOf(titres, one);
  const samples = hasOwnMasses(draft) ? replicates : undefined;
  const judged = judge(titres, titreStep, { samples, blanks, usual });
  const unready = {
    strength,
    usual,
    record,
    scattersMore: false,
    titres,
    blanks,
    judgement: judged,
    acid: undefined,
    doubt: undefined,
  };
  if (strength === undefined || replicates === undefined || !isBlankSettled(draft)) return unready;

  const acid = acidOf(replicates, blanks, strength);
  const massStep = massStepOf(draft, figures);
  if (isProblem(acid) || titreStep === undefined || massStep === undefined) {
    return { ...unready, acid };
  }
  const bench = benchFigures({
    replicates,
    blanks,
    molarity: strength.molarity,
    acid: oleic,
    titreStep,
    massStep,
    hasOwnMasses: hasOwnMasses(draft),
    molarityPercent: strength.percent,
    samplePercent: undefined,
    burettePercent: figures.in("%", "burettePercent"),
    usual,
  });
  if (isProblem(bench)) return { ...unready, acid };
  const doubt = { bench, halfWidth: expand(bench).halfWidth };
  return { ...unready, acid, doubt, scattersMore: usual !== undefined && !bench.usualFreedom };
}
