/** How much the words, the unit, the figures and the formula of a column speak for one role. */
import { isBare, measureNamed } from "../../core/quantity/measures";
import type { HeadingParts } from "./heading";
import { type ColumnFacts, median } from "./numbers-of-column";
import type { Role, RoleId } from "./roles";
import { speaksFor } from "./words/speaks-for";
import type { LanguageId } from "./words/terms";

export interface Evidence {
  readonly points: number;
  /** In words; "" for nothing worth saying. */
  readonly reason: string;
}

const none: Evidence = { points: 0, reason: "" };

/** What the words say. A number that belongs to a repeated column may stand anywhere. */
export function fromWords(
  id: RoleId,
  parts: HeadingParts,
  heading: string,
  language?: LanguageId,
): Evidence {
  const points = speaksFor(id, parts.text, language);
  return points === 0 ? none : { points, reason: `the heading "${heading}"` };
}

/** Units that stand for each other where a heading is loose. */
const alike: Readonly<Record<string, readonly string[]>> = {
  "kg/L": ["g/L"],
  "mg KOH/g": ["mg/g"],
};

const onlyIn: ReadonlySet<string> = new Set(["mol/L", "mg KOH/g", "kg/L", "C"]);

export function fromUnit(role: Role, { unit, isUnitAlone }: HeadingParts): Evidence {
  if (unit === undefined) return none;
  const place = role.units.indexOf(unit);
  const fits = place >= 0 || (alike[unit] ?? []).some((each) => role.units.includes(each));
  if (!fits) return { points: role.units.length === 0 ? -0.3 : -0.45, reason: "" };
  // A unit that only one role has says it all: alone, and beside words that nobody knows nearly so.
  const isOwn = role.units.length === 1 && onlyIn.has(unit);
  const points = isUnitAlone ? (isOwn ? 0.85 : 0.4) : isOwn ? 0.42 : 0.22;
  return { points, reason: `the unit ${unit}` };
}

const isWithin = (value: number, [from, to]: readonly [number, number], slack = 1): boolean =>
  value >= from / slack && value <= to * slack;

/** What a maker's own measure is about, to see whether figures may be in it. Common practice, no source. */
const about: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  g: { cup: 200, tablespoon: 15, teaspoon: 5 },
  mL: { drop: 0.05, cup: 240, tablespoon: 15, teaspoon: 5 },
  L: { cup: 0.24 },
  "g/L": { "%": 10 },
  "%": { ppm: 1e-4, "mg/kg": 1e-4 },
};

/** What a figure in a unit is in the unit that a role's usual figures are in. */
function inUsual({ units: [own = ""] }: Role, unit = ""): number {
  const guessed = about[own]?.[unit];
  if (guessed !== undefined) return guessed;
  // a bare gallon is about a US one
  const measure = measureNamed(isBare(unit) ? `US ${unit}` : unit);
  const of = measureNamed(own);
  return measure?.factor && of?.factor ? measure.factor.div(of.factor).toNumber() : 1;
}

function figuresFit(role: Role, unit: string | undefined, facts: ColumnFacts): Evidence {
  const { usual } = role;
  if (!usual || facts.numbers.length === 0) return none;
  const middle = median(facts.numbers);
  // A fraction shown as a percentage is in its own scale.
  const [first = ""] = role.units;
  const scaled =
    first === "%" && facts.isPercentFormat ? middle * 100 : middle * inUsual(role, unit);
  const shown = String(Number(middle.toPrecision(3)));
  if (isWithin(scaled, usual)) {
    const steady = role.isSteady === true && facts.filled >= 4;
    const isSteady = facts.different <= Math.max(3, facts.filled / 3);
    const points = steady ? (isSteady ? 0.16 : -0.08) : 0.1;
    return { points, reason: `figures around ${shown}` };
  }
  return isWithin(scaled, usual, 5) ? { points: -0.12, reason: "" } : { points: -0.4, reason: "" };
}

/** What stands in the cells. */
export function fromCells(role: Role, parts: HeadingParts, facts: ColumnFacts): Evidence {
  const { filled, numbers, dates, texts } = facts;
  if (filled === 0) return none;
  const share = (count: number): number => count / filled;
  switch (role.holds) {
    case "date":
      return share(dates) > 0.6
        ? { points: 0.45, reason: "the cells hold dates" }
        : { points: -0.6, reason: "" };
    case "text": {
      const isText = share(texts.length) > 0.6 || (numbers.length === 0 && dates === 0);
      return isText
        ? { points: 0.12, reason: "the cells hold words" }
        : { points: -0.7, reason: "" };
    }
    case "number": {
      if (dates > 0 && share(dates) > 0.5) return { points: -0.8, reason: "" };
      const words = role.id === "blank" && texts.some((text) => /^neutrali[sz]ed$/i.test(text));
      if (words) return { points: 0.4, reason: 'the word "neutralised"' };
      if (share(texts.length) > 0.5) return { points: -0.8, reason: "" };
      return figuresFit(role, parts.unit, facts);
    }
    default:
      return dates > filled / 2 ? { points: -0.5, reason: "" } : none;
  }
}

/** Signs in a formula of what it works out. */
const signs: readonly (readonly [RegExp, readonly RoleId[], number])[] = [
  [/\b56\.1\d*\b/, ["acidValue"], 0.35],
  [/\b(?:28\.2|282|25\.6|256)\b/, ["ffa"], 0.35],
  [/\b(?:AVERAGE|SUM)\([^)]*\)\s*-/i, ["correctedTitre"], 0.35],
  [/^=AVERAGE\([^)]*\)$/i, ["meanTitre"], 0.25],
  [/TITRE[._]CORRECTED/i, ["correctedTitre"], 0.6],
  [/TITRE[._](?:MEAN)?ACIDVALUE\(/i, ["acidValue"], 0.6],
  [/TITRE[._]FFA(?:PERCENT|FROMACIDVALUE)/i, ["ffa"], 0.6],
  [/TITRE[._]FFAUNCERTAINTY/i, ["ffaUncertainty"], 0.6],
  [/TITRE[._]VERDICT/i, ["verdict"], 0.6],
  [/TITRE[._]OILMASS/i, ["oilMass"], 0.6],
  [/TITRE[._](?:CATALYST|DOSE|CATALYSTFROMFFA)/i, ["catalyst"], 0.6],
  [/TITRE[._]METHANOL/i, ["methanol"], 0.6],
  [/TITRE[._]ROUTE/i, ["route"], 0.6],
];

export function fromFormula(role: Role & { id: RoleId }, facts: ColumnFacts): Evidence {
  if (facts.formula === "") return none;
  for (const [pattern, ids, points] of signs) {
    if (pattern.test(facts.formula)) {
      return ids.includes(role.id)
        ? { points, reason: `its formula ${facts.formula.slice(0, 60)}` }
        : { points: -0.15, reason: "" };
    }
  }
  // Readings are typed; results are worked out.
  return role.isResult ? { points: 0.06, reason: "" } : { points: -0.1, reason: "" };
}
