/** What is worth saying about blanks and titres. */
import { computed, hundred } from "../../../core/exact/exact";
import { isProblem } from "../../../core/problem/problem";
import { slippedPair } from "../../../core/replicates/slipped-pair";
import { type BenchFigures, pooledFreedom } from "../../../core/uncertainty/bench";
import { expand } from "../../../core/uncertainty/expanded";
import {
  blankShare,
  blankShareTooLarge,
  blankShareWorthSaying,
} from "../../../core/titration/corrected-titre";
import { mostReadings } from "../draft";
import { contradictionIn } from "../contradiction";
import { hasOwnMasses, stepsWanted, suggestedSample, suggestedWords } from "../sample";
import { digits, fixed, withDoubt } from "../../widgets/shown-number";
import { know, check, type Nudge, type Seen } from "./nudge";

/** A blank above a third of the titre: most of what is read is solvent, not oil. */
export function largeBlank({ working: { titres, blanks } }: Seen): Nudge[] {
  if (blanks.length === 0 || titres.length === 0) return [];
  const share = blankShare(
    titres.map(({ titre }) => titre),
    blanks,
  );
  if (share.lte(blankShareWorthSaying) || share.gte(1)) return [];
  const todo = share.gte(blankShareTooLarge)
    ? "weigh more oil and titrate again"
    : "a larger sample would make the result surer";
  return [
    check("blank", `The blank is ${fixed(share.times(hundred), 0)} % of the titre: ${todo}.`),
  ];
}

/** So many times more or less acid than was expected is worth a second look (common practice, no source). */
const farOff = 4;

/** A slip of the decimal point in every titre shows only beside what one expected. */
export function unexpected({ figures, working: { acid } }: Seen): Nudge[] {
  const guess = figures.in("%", "expected");
  if (guess === undefined || acid === undefined || isProblem(acid)) return [];
  const times = acid.ffa.div(guess);
  if (times.lt(farOff) && times.times(farOff).gt(1)) return [];
  return [
    check(
      "unexpected",
      `You expected about ${digits(guess)} % FFA, and this is ${digits(acid.ffa, 2)} %: look at the decimal point of the titres, at the strength and at the mass.`,
    ),
  ];
}

/** A titre of few steps: the graduation alone is doubt of many percent. Said once, with what would do. */
export function fewSteps(seen: Seen): Nudge[] {
  const { figures, working } = seen;
  const { acid, strength } = working;
  const step = figures.in("mL", "titreStep");
  if (acid === undefined || isProblem(acid) || strength === undefined || step === undefined)
    return [];
  if (acid.correctedTitre.gte(step.times(stepsWanted))) return [];
  const steps = digits(acid.correctedTitre.div(step), 2);
  const wanted = `weigh ${suggestedWords(suggestedSample(acid.ffa, strength, step))}.`;
  // where the blank has been named as the fault, only how much oil is left to say
  const found =
    largeBlank(seen).length > 0
      ? `For a titre of ${stepsWanted} steps of ${step.toString()} mL`
      : `The titre is only ${steps} steps of ${step.toString()} mL long`;
  return [check("few steps", `${found}: ${wanted}`)];
}

/** One more titre, if its scatter is like that of the others. */
const withOneMore = (bench: BenchFigures): number =>
  expand({
    ...bench,
    titres: bench.titres + 1,
    freedom: pooledFreedom(bench.titres + 1, bench.blanks),
    weighings: bench.weighings > 1 ? bench.titres + 1 : bench.weighings,
  }).halfWidth;

/** Less than a tenth gained is not worth five minutes (common practice, no source). */
const worthwhile = 0.9;
/** A result this sure doses well enough: the ± is a fiftieth of the acid (common practice, no source). */
const sureEnough = 0.02;
/** After this many that agree nothing is asked for. */
const enough = 3;

/** Is one more replicate worth the work? Where titres do not agree, the verdict says what to do. */
export function oneMore({ draft, working: { doubt, acid, titres, judgement } }: Seen): Nudge[] {
  if (draft.titres.length >= mostReadings.titres) {
    return [know("one more", "Six titres are all a row holds.")];
  }
  const isAsked = judgement?.agrees === true && titres.length < enough;
  if (!isAsked || doubt === undefined || acid === undefined || isProblem(acid)) return [];
  const after = withOneMore(doubt.bench);
  const isSure = computed(doubt.halfWidth).lte(acid.ffa.times(sureEnough));
  if (isSure || after >= worthwhile * doubt.halfWidth) return [];
  const [from, to] = [doubt.halfWidth, after].map((each) => withDoubt(acid.ffa, each).halfWidth);
  return [
    know(
      "one more",
      `One more titre would bring the ± from ${from ?? ""} to about ${to ?? ""} % FFA.`,
    ),
  ];
}

function massless({ draft, working: { titres } }: Seen): Nudge[] {
  if (!hasOwnMasses(draft)) return [];
  const lacking = titres.filter(({ mass }) => mass === undefined).map(({ number }) => number);
  return lacking.length === 0
    ? []
    : [
        check(
          "own mass",
          `Titre ${lacking.join(", ")}: its oil is not weighed. Change it to add the mass.`,
        ),
      ];
}

/** Two titres of which one is ten times the other: the verdict of two can only say that they lie apart. */
function slipped({ working: { judgement } }: Seen): Nudge[] {
  const sentence = judgement && slippedPair(judgement.set, judgement.found);
  return sentence === undefined ? [] : [check("slipped", sentence)];
}

/** The figures contradict each other: a titre below its blank. */
const contradiction = ({ working: { acid, titres } }: Seen): Nudge[] =>
  isProblem(acid) ? [check("contradiction", contradictionIn(titres, acid))] : [];

export const aboutBlank = (seen: Seen): Nudge[] => largeBlank(seen);

export const aboutTitres = (seen: Seen): Nudge[] => [
  ...contradiction(seen),
  ...slipped(seen),
  ...massless(seen),
  ...oneMore(seen),
  ...unexpected(seen),
  ...largeBlank(seen),
  ...fewSteps(seen),
];
