/**
 * Every figure of a row as it comes out of the right way of working, or of a way that people are known
 * to go wrong: what the held figures are compared with. A figure that the sheet holds may stand in for
 * what comes before it. In doubles, since a wrong row is tried against many ways and compared within
 * the digits shown; the figures that are reported come from the core (core-figures.ts).
 */
import { densityAt } from "../../../core/batch/density";
import { isProblem } from "../../../core/problem/problem";
import type { AmountUnit } from "../../../core/quantity/units";
import { acidValueDefinition } from "../../../core/reference/compounds";
import { type FattyAcid, oleic } from "../../../core/reference/fatty-acids";
import type { Oil } from "../../../core/reference/oils";
import type { RoleId } from "../../recognising/roles";
import { plain, reportedMass, molarMass } from "./molar-masses";
import type { Readings } from "../reading/readings";
import type { Figure, Ways } from "./ways";

/** Figures the sheet holds that stand in for their working. */
export type From = ReadonlyMap<RoleId, number>;
export const fromNothing: From = new Map();

/** Undefined stays undefined. */
export const times = (figure: Figure, factor: number): Figure =>
  figure === undefined ? undefined : figure * factor;

export const usualDensity = plain<Oil>((oil) => {
  const found = densityAt(oil);
  return isProblem(found) ? oil.density : found;
});
const factorOf = plain<AmountUnit>((unit) => unit.factor);
export const definition = acidValueDefinition.toNumber();

const kilogramsPerLitre = ({ oil }: Readings, w: Ways): number => w.oilDensity ?? usualDensity(oil);

function average(list: readonly Figure[]): Figure {
  let sum = 0;
  let filled = 0;
  for (const each of list) {
    if (each === undefined) continue;
    sum += each;
    filled += 1;
  }
  return filled === 0 ? undefined : sum / filled;
}

export const meanTitre = (r: Readings, w: Ways): Figure => (w.mean ?? average)(r.titres);

const blankOf = (r: Readings): number => average(r.blanks ?? []) ?? 0;

function lessBlank(r: Readings, w: Ways, titre: number): number {
  const blank = blankOf(r);
  return w.lessBlank ? w.lessBlank(titre, blank) : titre - blank;
}

export function correctedTitre(r: Readings, w: Ways, from: From): Figure {
  const held = from.get("correctedTitre");
  if (held !== undefined) return w.net ? w.net(held, blankOf(r)) : held;
  const titre = from.get("meanTitre") ?? meanTitre(r, w);
  return titre === undefined ? undefined : lessBlank(r, w, titre);
}

/** mol/L */
function molarity(r: Readings, w: Ways): Figure {
  if (w.molarity) return w.molarity(r);
  if (r.molarity !== undefined) return r.molarity;
  if (r.strength === undefined || !r.titrantBase) return undefined;
  return r.strength / molarMass(r.titrantBase);
}

/** g of the sample when it is one for all titres. */
function sampleMass(r: Readings, w: Ways): Figure {
  const weighed = r.masses[0];
  if (weighed !== undefined) return weighed;
  return times(r.volume, w.sampleDensity ?? usualDensity(r.sampleOil ?? r.oil));
}

const hasOwnMasses = ({ masses }: Readings): boolean => masses.some((mass) => mass !== masses[0]);

/** mL of titrant for each gram of oil: of each titre with its own mass, or of the corrected titre. */
function netPerGram(r: Readings, w: Ways, from: From): Figure {
  const isFromHeld = from.has("correctedTitre") || from.has("meanTitre");
  const hasOwn = hasOwnMasses(r);
  if (hasOwn && !isFromHeld) {
    return average(
      r.titres.map((titre, at) => {
        const mass = r.masses[at];
        return titre === undefined || mass === undefined
          ? undefined
          : lessBlank(r, w, titre) / mass;
      }),
    );
  }
  const net = correctedTitre(r, w, from);
  const mass = hasOwn ? average(r.masses) : sampleMass(r, w);
  return net === undefined || mass === undefined ? undefined : net / mass;
}

/** Has this row anything to work an acid value out of? */
export const hasTitration = (r: Readings): boolean => r.titres.some((titre) => titre !== undefined);

const percentOf = (acid: FattyAcid): number => reportedMass(acid) / (10 * definition);

export function acidValue(r: Readings, w: Ways, from: From): Figure {
  const held = from.get("acidValue");
  if (held !== undefined) return held;
  const ffa = from.get("ffa");
  if (ffa !== undefined) return (ffa * (w.ffaScale ?? 1)) / percentOf(oleic);
  const net = netPerGram(r, w, from);
  const c = molarity(r, w);
  if (net !== undefined && c !== undefined) return definition * c * net;
  return r.ofLot?.acidValue ?? givenAcidValue(r);
}

/** The acid value of a row without titres: what it holds, or what its % FFA comes to. */
export const givenAcidValue = ({ held }: Readings): Figure =>
  held.get("acidValue")?.value ?? times(held.get("ffa")?.value, 1 / percentOf(oleic));

export const ffaPercent = (r: Readings, w: Ways, from: From): Figure =>
  times(acidValue(r, w, from), percentOf(w.acid ?? oleic) * (w.ffaScale ?? 1));

const unitIn = (r: Readings, w: Ways): AmountUnit | undefined =>
  r.amount && (w.unit ? w.unit(r.amount.unit) : r.amount.unit);

/** kg of oil. */
export function kilograms(r: Readings, w: Ways, from: From): Figure {
  const held = from.get("oilMass");
  if (held !== undefined) return held;
  const unit = unitIn(r, w);
  if (!r.amount || !unit) return undefined;
  const inUnit = r.amount.value * factorOf(unit);
  return unit.measures === "volume" ? inUnit * kilogramsPerLitre(r, w) : inUnit;
}

/** L of oil. */
export function litres(r: Readings, w: Ways, from: From): Figure {
  if (w.kilogramsAsLitres) return kilograms(r, w, from);
  if (w.kilogramsAsLitres) return kilograms(r, w, from);
  const unit = unitIn(r, w);
  const isByMass = from.has("oilMass") && !w.litresByAmount;
  if (!isByMass && r.amount && unit?.measures === "volume") return r.amount.value * factorOf(unit);
  // from kilograms that are written down: that a litre weighs 1 kg did something to them, or nothing at all
  const density = from.has("oilMass") ? usualDensity(r.oil) : kilogramsPerLitre(r, w);
  return times(kilograms(r, w, from), 1 / density);
}
