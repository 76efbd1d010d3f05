/** Twins of the functions about uncertainty. */
import { largestSample, largestTitre, standardised } from "../../core/uncertainty/advice";
import { freedomWords, noBlank } from "../uncertainty/budget";
import {
  benchText,
  type BenchText,
  combined,
  expanded,
  ifBlank,
  normal,
  pooledFreedom,
  scatterParts,
  slopes,
  standards,
  studentT,
} from "./shared/bench-text";
import { nothing } from "./shared/pairs";
import type { Reading } from "./shared/reading";
import { always, spoken, text, when } from "./shared/text";
import type { Work } from "./shared/work";

const ffaUncertainty: Work = (reading) => {
  const bench = benchText(reading);
  return reading.answer(bench ? expanded(bench) : "0");
};

/** One thing improved, and when that is open to this bench: as in the core's advice. */
function changes(bench: BenchText): [label: string, isOpen: string, bench: BenchText][] {
  const { titres, blanks, weighings, mass, net } = bench;
  const oneMore = (more: string, moreBlanks: string): BenchText => ({
    ...bench,
    titres: more,
    blanks: moreBlanks,
    freedom: pooledFreedom(more, moreBlanks),
    weighings: weighings === "1" ? "1" : more,
  });
  const blank = ifBlank(blanks, always, "FALSE");
  return [
    ["a balance ten times finer", always, { ...bench, massStep: `${bench.massStep}/10` }],
    ["half the burette step", always, { ...bench, titreStep: `${bench.titreStep}/2` }],
    ["one more titre", always, oneMore(`(${titres}+1)`, blanks)],
    ["one more blank", blank, oneMore(titres, `(${blanks}+1)`)],
    [
      "ten times the sample",
      `AND(${mass}*10<=${largestSample},${net}*10+${bench.blank}<=${largestTitre})`,
      {
        ...bench,
        mass: `(${mass}*10)`,
        net: `(${net}*10)`,
        samplePercent: `${bench.samplePercent}/10`,
      },
    ],
    [
      "a standardised titrant",
      `${bench.molarityPercent}>${standardised}`,
      { ...bench, molarityPercent: String(standardised) },
    ],
  ];
}

const lowest = (reading: Reading, bench: BenchText): string => {
  const each = changes(bench).map(([label, isOpen, changed]) =>
    reading.call.helper(`± % FFA with ${label}`, when(isOpen, expanded(changed), '""')),
  );
  return `MIN(${each.join(",")})`;
};

const budget: Work = (reading) => {
  const bench = benchText(reading);
  if (!bench) return nothing;
  const { helper } = reading.call;
  const { ffa, net, blank, blanks, molarity, mass, freedom } = bench;
  const factors = slopes(bench);
  const all = standards(bench);
  const parts = all.map((standard, place) =>
    helper(`cause ${place + 1} of the budget, as % FFA`, `${standard}*${factors[place] ?? ""}`),
  );
  const whole = helper("all causes together, % FFA", combined(parts));
  const scatter = helper("scatter part, % FFA", combined(parts.slice(0, scatterParts)));
  const rest = helper("rest, % FFA", combined(parts.slice(scatterParts)));
  const t = helper("Student t of the scatter part", studentT(freedom));
  const share = (part: string): string => `100*(${part}/${whole})^2`;
  const blankValue = ifBlank(blanks, blank, text(noBlank));
  const blankUnit = ifBlank(blanks, text("mL"), '""');
  const titre = `${net}+${blank}`;
  const values = [titre, blankValue, titre, blankValue, molarity, mass, mass];
  const rows = parts.map((part, place) => [
    undefined,
    values[place],
    values[place] === blankValue ? blankUnit : undefined,
    all[place],
    part,
    share(part),
  ]);
  const degrees = spoken(freedomWords, freedom, `IF(${freedom}=1,"","s")`);
  const halfWidth = combined([`${t}*${scatter}`, `${normal}*${rest}`]);
  const none = undefined;
  return reading.table([
    [none, none, none, none, none, none],
    ...rows,
    [none, t, degrees, none, scatter, share(scatter)],
    [none, normal, none, none, rest, share(rest)],
    [none, ffa, none, none, halfWidth, none],
    [none, none, none, none, lowest(reading, bench), none],
  ]);
};

export const uncertainty = {
  FFAUNCERTAINTY: ffaUncertainty,
  BUDGET: budget,
  CHECKS: (): ReturnType<Work> => ({ kind: "value" }),
};
