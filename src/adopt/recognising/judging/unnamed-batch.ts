/** Of a column of which no word is known: what of a batch its figures can only be. */
import {
  each,
  type Figures,
  isAlike,
  isBetween,
  isOneFigure,
  isVaried,
  lineOf,
  ratioOf,
  valuesOf,
} from "./figures";
import { acidOf, gramsOf, type KnownTable, readOf } from "./known-table";
import type { Rule } from "./unnamed-titration";

/** Rounded to whole grams, or to tenths of a litre. */
const near = 0.015;

/** How many times the acid's part for one % FFA, or mg KOH/g, the reaction's part is. */
const ofReaction: readonly [number, number] = [0.8, 20];

/** Is a dose for each of the oil a straight line of the acid, as a part for the acid and a charge are? */
function isDoseOf(dose: Figures, oil: Figures, acid: Figures): boolean {
  const perOil = each(dose, oil, (a, b) => a / b);
  return isVaried(acid) && isVaried(perOil) && isStraight(perOil, acid);
}

function isStraight(perOil: Figures, acid: Figures): boolean {
  const line = lineOf(perOil, acid, 0.012);
  if (!line || line.slope <= 0) return false;
  const times = line.at0 / line.slope;
  return times >= ofReaction[0] && times <= ofReaction[1];
}

const sumOf = (t: KnownTable): Figures | undefined => {
  const [acid, reaction] = [t.of("acidDose"), t.of("reactionDose")];
  return acid && reaction && each(acid, reaction, (a, b) => a + b);
};

const all: Rule = ({ own }, t) => {
  const sum = sumOf(t);
  if (t.has("catalyst") || !isVaried(own)) return [];
  if (sum) return isAlike(own, sum, 0.006, 1) ? ["catalyst"] : [];
  const [oil, acid] = [t.of("oilAmount") ?? t.of("oilMass"), acidOf(t)];
  return oil && acid && isVaried(oil) && isDoseOf(own, oil, acid) ? ["catalyst"] : [];
};

const oil: Rule = ({ own }, t) => {
  if (t.has("oilAmount") || !isVaried(own)) return [];
  const [dose, acid, methanol] = [t.of("catalyst"), acidOf(t), t.of("methanol")];
  const mass = t.of("oilMass");
  if (mass && ratioOf(mass, own, near) !== undefined && isBetween(mass, own, [0.86, 0.96]))
    return ["oilAmount"];
  if (dose && acid && isDoseOf(dose, own, acid)) return ["oilAmount"];
  const reaction = t.of("reactionDose");
  const isGivenMethanol =
    methanol !== undefined &&
    isBetween(methanol, own, [0.12, 0.4]) &&
    ratioOf(methanol, own, near) !== undefined;
  const isDosed = reaction !== undefined && ratioOf(reaction, own, near) !== undefined;
  const made = t.of("litresMade");
  const isMade = made !== undefined && isBetween(made, own, [0.75, 1.05]);
  return isGivenMethanol && (isDosed || isMade) ? ["oilAmount"] : [];
};

const parts: Rule = ({ own }, t) => {
  if (!isVaried(own)) return [];
  const total = t.of("catalyst");
  const [acid, reaction] = [t.of("acidDose"), t.of("reactionDose")];
  if (total && reaction && !acid)
    return isAlike(
      own,
      each(total, reaction, (a, b) => a - b),
      0.02,
      1,
    )
      ? ["acidDose"]
      : [];
  if (total && acid && !reaction)
    return isAlike(
      own,
      each(total, acid, (a, b) => a - b),
      0.02,
      1,
    )
      ? ["reactionDose"]
      : [];
  const [oil, of] = [t.of("oilAmount"), acidOf(t)];
  if (!total || !oil || !of || acid || reaction || !isVaried(oil)) return [];
  if (!isBetween(own, total, [0.02, 0.98])) return [];
  // in one ratio to the oil, or to the acid in it; the rest of the whole is then the other
  const rest = each(total, own, (a, b) => a - b);
  const inAll = each(oil, of, (a, b) => a * b);
  const isFor = (part: Figures, other: Figures): boolean =>
    ratioOf(part, oil, near) !== undefined && ratioOf(other, inAll, 0.03) !== undefined;
  if (isFor(own, rest)) return ["reactionDose"];
  return isFor(rest, own) ? ["acidDose"] : [];
};

const rate: Rule = ({ own }, t) => {
  const [dose, oil] = [t.of("catalyst"), t.of("oilAmount")];
  if (!dose || !oil || t.has("catalystRate") || !isVaried(own) || !isVaried(oil)) return [];
  return ratioOf(
    own,
    each(dose, oil, (a, b) => a / b),
    near,
  ) === undefined
    ? []
    : ["catalystRate"];
};

/** Nearly the dose, and not the same: a hand and a scale lie between. */
const weighed: Rule = ({ own }, t) => {
  const dose = t.of("catalyst");
  if (!dose || t.has("weighed") || !isVaried(own)) return [];
  return isBetween(own, dose, [0.95, 1.05]) && !isAlike(own, dose, 0.001) ? ["weighed"] : [];
};

/** A % FFA by what the doses make of it: no other acid figure has so small a charge beside one of it. */
const percentOfDose: readonly [number, number] = [2.4, 5.2];
const ffa: Rule = ({ own }, t) => {
  const [dose, oil] = [t.of("catalyst"), t.of("oilAmount")];
  if (!dose || !oil || acidOf(t) || readOf(t) || !isVaried(own) || !isVaried(oil)) return [];
  const line = lineOf(
    each(dose, oil, (a, b) => a / b),
    own,
    0.012,
  );
  if (!line || line.slope <= 0) return [];
  const times = line.at0 / line.slope;
  return times >= percentOfDose[0] && times <= percentOfDose[1] ? ["ffa"] : [];
};

/** kg in one of the oil's unit. */
const masses: Readonly<Record<string, number>> = { L: 0.915, "US gal": 3.464, "imp gal": 4.16 };

const besideOil: Rule = ({ own }, t) => {
  const oil = t.of("oilAmount");
  if (!oil || !isVaried(oil) || !isVaried(own)) return [];
  const ratio = ratioOf(own, oil, near);
  const perUnit = masses[t.unit("oilAmount") ?? ""];
  if (ratio === undefined)
    return isBetween(own, oil, [0.8, 1.02]) && !t.has("litresMade") ? ["litresMade"] : [];
  if (perUnit !== undefined && Math.abs(ratio / perUnit - 1) < 0.035 && !t.has("oilMass"))
    return ["oilMass"];
  return ratio >= 0.15 && ratio <= 0.35 && !t.has("methanol") ? ["methanol"] : [];
};

/** Two kinds of lye that are sold, or better; a table that doses has no other such figure in all of its rows. */
const assay: Rule = ({ own }, t) => {
  const [value = 0] = valuesOf(own);
  const doses = t.has("catalyst") || t.has("oilAmount");
  return doses && !t.has("assay") && isOneFigure(own) && value >= 84 && value < 100
    ? ["assay"]
    : [];
};

const density: Rule = ({ own }, t) => {
  const [value = 0] = valuesOf(own);
  const doses = t.has("catalyst") || t.has("oilAmount");
  const isFree = !t.has("density") && t.has("assay");
  return doses && isFree && isOneFigure(own) && value > 0.87 && value < 0.935 ? ["density"] : [];
};

const grams: Readonly<Record<string, number>> = { g: 1, kg: 1000 };

/** What each litre got for the reaction, or as much less as the lye is not pure. */
const charge: Rule = ({ own }, t) => {
  const [dose, oil, acid] = [t.of("catalyst"), t.of("oilAmount"), acidOf(t)];
  const scale = grams[t.unit("catalyst") ?? ""];
  const perUnit = masses[t.unit("oilAmount") ?? ""];
  if (t.has("baseCharge") || !isOneFigure(own) || !dose || !oil || !acid) return [];
  if (scale === undefined || perUnit === undefined) return [];
  // a sample, or a titrant, may be the same figure
  if (readOf(t) && !(gramsOf(t) && (t.has("molarity") || t.has("strength")))) return [];
  const litres = perUnit / 0.915;
  const line = lineOf(
    each(dose, oil, (a, b) => (a * scale) / b / litres),
    acid,
    0.012,
  );
  const [value = 0] = valuesOf(own);
  const share = line && value / line.at0;
  return share !== undefined && share > 0.82 && share < 1.02 ? ["baseCharge"] : [];
};

export const batchRules: readonly Rule[] = [
  all,
  oil,
  parts,
  rate,
  weighed,
  besideOil,
  assay,
  density,
  charge,
  ffa,
];
