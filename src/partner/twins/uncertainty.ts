/** Twins of the functions about uncertainty. */
import { freedomWords, noBlank } from "../../functions/uncertainty/budget";
import { adviceText } from "./shared/advice-text";
import {
  benchText,
  combined,
  expanded,
  ifBlank,
  normal,
  scatterParts,
  slopes,
  standards,
  studentT,
} from "./shared/bench-text";
import { nothing } from "./shared/pairs";
import { spoken, text } from "./shared/text";
import type { Work } from "./shared/work";

const ffaUncertainty: Work = (reading) => {
  const bench = benchText(reading);
  return reading.answer(bench ? expanded(bench) : "0");
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
  const advice = adviceText(reading, bench, helper("expanded uncertainty, % FFA", halfWidth));
  const none = undefined;
  return reading.table([
    [none, none, none, none, none, none],
    ...rows,
    [none, t, degrees, none, scatter, share(scatter)],
    [none, normal, none, none, rest, share(rest)],
    [none, ffa, none, none, halfWidth, none],
    [none, advice.words, none, none, advice.after, none],
  ]);
};

export const uncertainty = {
  FFAUNCERTAINTY: ffaUncertainty,
  BUDGET: budget,
  CHECKS: (): ReturnType<Work> => ({ kind: "value" }),
};
