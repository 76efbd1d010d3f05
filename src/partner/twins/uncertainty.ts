/** Twins of the functions about uncertainty. */
import { neutralisedWord } from "../../core/titration/neutralised";
import { buretteSource } from "../../core/uncertainty/contributions";
import { closingLabels, freedomWords, normalWord } from "../../functions/uncertainty/budget";
import { adviceText } from "./shared/advice-text";
import {
  type BenchText,
  benchText,
  combined,
  expanded,
  ifBlank,
  normal,
  type ResultText,
  scatterParts,
  slopes,
  standards,
  studentT,
} from "./shared/bench-text";
import { definition } from "./shared/doses";
import { nothing } from "./shared/pairs";
import type { Reading } from "./shared/reading";
import { always, spoken, text } from "./shared/text";
import type { Work } from "./shared/work";
import { fattyAcidMass } from "./shared/words";
import { isPlausible, isPlausiblePercent } from "./titration";

const ofOil = { massesName: "sampleMasses", samplePercentName: "samplePercent" };

function ffaBench(reading: Reading): BenchText | undefined {
  const acid = fattyAcidMass(reading);
  return benchText(reading, {
    ...ofOil,
    label: "FFA, %",
    figure: (perGram, molarity) => `${molarity}*${perGram}*${acid}/10`,
    isAllowed: isPlausiblePercent,
  });
}

const ofAcidValue: ResultText = {
  ...ofOil,
  label: "acid value, mg KOH/g",
  figure: (perGram, molarity) => `${definition}*${molarity}*${perGram}`,
  isAllowed: isPlausible,
};

/** Of a hundred, so that the doubt is in percent. */
const ofStrength: ResultText = {
  massesName: "khpMasses",
  samplePercentName: "purityPercent",
  label: "the strength, %",
  figure: () => "100",
  isAllowed: () => always,
};

const halfWidthOf =
  (benchOf: (reading: Reading) => BenchText | undefined): Work =>
  (reading) => {
    const bench = benchOf(reading);
    return reading.answer(bench ? expanded(bench) : "0");
  };

type Row = readonly (string | undefined)[];

/** The rows with the burette's in its place, or without it: a row less. */
function orWithout(burette: string, before: Row[], own: Row, after: readonly Row[]): Row[] {
  if (burette === "0") return [...before, ...after];
  const [without, within] = [after, [own, ...after]];
  const empty = '""';
  const later = within.map((row, place): Row =>
    row.map(
      (cell, column) => `IF(${burette}=0,${without[place]?.[column] ?? empty},${cell ?? empty})`,
    ),
  );
  return [...before, ...later];
}

const budget: Work = (reading) => {
  const bench = ffaBench(reading);
  if (!bench) return nothing;
  const { helper } = reading.call;
  const { ffa, net, blank, blanks, molarity, mass, freedom, burettePercent } = bench;
  const factors = slopes(bench);
  const all = standards(bench);
  const parts = all.map((standard, place) =>
    helper(`cause ${place + 1} of the budget, as % FFA`, `${standard}*${factors[place] ?? ""}`),
  );
  const scatter = helper("scatter part, % FFA", combined(parts.slice(0, scatterParts)));
  const rest = helper("rest, % FFA", combined(parts.slice(scatterParts)));
  const t = helper("Student t of the scatter part", studentT(freedom));
  const halfWidth = helper(
    "expanded uncertainty, % FFA",
    combined([`${t}*${scatter}`, `${normal}*${rest}`]),
  );
  const share = (part: string, factor: string): string => `100*(${factor}*${part}/${halfWidth})^2`;
  const blankValue = ifBlank(blanks, blank, text(neutralisedWord));
  const titre = `${net}+${blank}`;
  const values = [titre, blankValue, titre, blankValue, molarity, mass, mass, net];
  // A label moves down where there is a row for the burette: then it is written out.
  const isFixed = burettePercent === "0";
  const label = (words: string): string | undefined => (isFixed ? undefined : text(words));
  const rows = parts.map((part, place): Row => [
    undefined,
    values[place],
    undefined,
    all[place],
    part,
    share(part, place < scatterParts ? t : normal),
  ]);
  const degrees = spoken(freedomWords, freedom, `IF(${freedom}=1,"","s")`);
  const advice = adviceText(reading, bench, halfWidth);
  const none = undefined;
  const [, , , , , , , own = []] = rows;
  const burette = [label(buretteSource), own[1], label("mL"), ...own.slice(3)];
  return reading.table([
    [none, none, none, none, none, none],
    ...orWithout(burettePercent, rows.slice(0, 7), burette, [
      [label(closingLabels.scatter), t, degrees, none, scatter, share(scatter, t)],
      [label(closingLabels.rest), normal, label(normalWord), none, rest, share(rest, normal)],
      [label(closingLabels.result), ffa, label("%"), none, halfWidth, none],
      [label(closingLabels.advice), advice.words, none, none, advice.after, none],
    ]),
  ]);
};

export const uncertainty = {
  FFAUNCERTAINTY: halfWidthOf(ffaBench),
  ACIDVALUEUNCERTAINTY: halfWidthOf((reading) => benchText(reading, ofAcidValue)),
  KHPUNCERTAINTY: halfWidthOf((reading) => benchText(reading, ofStrength)),
  BUDGET: budget,
  CHECKS: (): ReturnType<Work> => ({ kind: "value" }),
};
