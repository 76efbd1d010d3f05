/** Which held figures another may have been worked out from: its formula says, else what is usual. */
import type { RoleId } from "../../recognising/roles";
import type { FormulaFacts } from "../reading/formula-facts";
import type { HeldFigure } from "../reading/held-figure";
import type { Readings } from "../reading/readings";
import { type From, kilograms, litres, times } from "./row-arithmetic";
import { asPure, type Written } from "./expected-figure";

export interface Origin {
  readonly from: From;
  /** How unsure the digits of what it starts from make the result: a relative half-width. */
  readonly doubt: number;
}

const titrations: readonly RoleId[] = ["correctedTitre", "meanTitre"];
const before: Partial<Record<RoleId, readonly RoleId[]>> = {
  correctedTitre: ["meanTitre"],
  acidValue: [...titrations, "ffa"],
  ffa: [...titrations, "acidValue"],
  reactionDose: ["oilMass"],
  acidDose: [...titrations, "acidValue", "ffa", "oilMass"],
  catalystRate: [...titrations, "acidValue", "ffa", "oilMass", "acidDose", "reactionDose"],
  catalyst: [
    ...titrations,
    "acidValue",
    "ffa",
    "oilMass",
    "acidDose",
    "reactionDose",
    "catalystRate",
  ],
};

/** Left out in turn: a dose may start from the acid value or from % FFA, from parts or from neither. */
const leftOut: readonly (readonly RoleId[])[] = [
  [],
  ["catalystRate"],
  ["acidValue", "catalystRate"],
  ["ffa", "catalystRate"],
  ["acidDose", "reactionDose", "catalystRate"],
  ["acidDose", "reactionDose", "catalystRate", "ffa"],
  ["acidDose", "reactionDose", "catalystRate", "acidValue"],
  ["acidValue", "ffa", "acidDose", "reactionDose", "catalystRate"],
  ["acidDose", "reactionDose", "catalystRate", "acidValue", "ffa", "correctedTitre", "meanTitre"],
];

/** A figure held in the row, in the scale in which it stands in for its working. */
export interface Upstream {
  readonly role: RoleId;
  readonly value: number;
  /** A wrong part of a dose in the other way of weighing: only its mistake would tell in which it is. */
  readonly orElse?: number;
  readonly doubt: number;
  /** It stands in another table, where no formula of this one need point. */
  readonly isOfLot?: true;
}

const isPart = (role: RoleId): boolean => role === "acidDose" || role === "reactionDose";

/** @param isWrong nothing says in which way of weighing it is written */
export function upstreamOf(
  { role, value, halfDigit }: HeldFigure,
  unit: string | undefined,
  written: Written,
  isWrong: boolean,
  readings: Readings,
): Upstream | undefined {
  const doubt = halfDigit / Math.abs(value);
  if (isPart(role)) {
    const pure = asPure(value, unit, written, readings);
    const other = asPure(value, unit, written === "pure" ? "weighed" : "pure", readings);
    if (pure === undefined) return undefined;
    return { role, value: pure, doubt, ...(isWrong && other !== undefined && { orElse: other }) };
  }
  if (role !== "catalystRate") return { role, value, doubt };
  const weighed = written === "pure" ? (value * 100) / (readings.assay ?? 100) : value;
  if (unit === "g/L") return { role, value: weighed, doubt };
  const volume = litres(readings, {}, new Map());
  const mass = kilograms(readings, {}, new Map());
  const grams = times(mass, unit === "%" ? weighed * 10 : weighed);
  return volume === undefined || grams === undefined
    ? undefined
    : { role, value: grams / volume, doubt };
}

/** What a figure rests on directly hides what that rests on: the first that is there counts. */
const acidChain: readonly RoleId[] = [
  "acidDose",
  "acidValue",
  "ffa",
  "correctedTitre",
  "meanTitre",
];
const doubtOfAcid = (used: readonly Upstream[]): number => {
  const doubts = acidChain.flatMap((role) => used.find((each) => each.role === role)?.doubt ?? []);
  // Which of acid value and % FFA was used is not known: the less sure one counts.
  return Math.max(0, ...doubts.slice(0, 2));
};

/** The acid part is seldom half of a dose. */
const shareOfAcid = 0.5;

function origin(role: RoleId, used: readonly Upstream[]): Origin {
  const from = new Map(used.map((each) => [each.role, each.value]));
  const others = used.filter((each) => !acidChain.includes(each.role));
  const isTotal = role === "catalyst" || role === "catalystRate";
  // A difference of titres is as unsure as the titre itself, which is the larger figure.
  const weight = role === "correctedTitre" ? 4 : isTotal ? shareOfAcid : 1;
  return {
    from,
    doubt: weight * doubtOfAcid(used) + others.reduce((sum, { doubt }) => sum + doubt, 0),
  };
}

/** The one origin, and with each of its parts in the other way of weighing. */
function readingsOf(role: RoleId, used: readonly Upstream[]): Origin[] {
  const others = used.flatMap((each) =>
    each.orElse === undefined
      ? []
      : [used.map((one) => (one === each ? { ...one, value: each.orElse as number } : one))],
  );
  return [used, ...others].map((each) => origin(role, each));
}

/** The likeliest first. */
export function originsOf(
  role: RoleId,
  held: readonly Upstream[],
  facts: FormulaFacts | undefined,
): Origin[] {
  const possible = held.filter((each) => (before[role] ?? []).includes(each.role));
  if (facts) {
    const read = possible.filter((each) => facts.roles.has(each.role));
    if (read.some((each) => acidChain.includes(each.role))) return readingsOf(role, read);
    const ofLot = possible.filter(({ isOfLot }) => isOfLot);
    if (ofLot.length > 0) return ofLot.flatMap((each) => readingsOf(role, [...read, each]));
    return read.length > 0 ? readingsOf(role, read) : [];
  }
  const seen = new Set<string>();
  const found: Origin[] = [];
  for (const without of leftOut) {
    const used = possible.filter((each) => !without.includes(each.role));
    const key = used.map((each) => each.role).join();
    if (used.length === 0 || seen.has(key)) continue;
    seen.add(key);
    found.push(...readingsOf(role, used));
  }
  return found;
}
