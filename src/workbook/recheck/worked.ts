/**
 * Every figure of a row, worked out the right way or in a way that people are known to go wrong: the
 * same core arithmetic with other inputs. A figure that the sheet holds may stand in for what comes
 * before it.
 */
import { type Exact, exact, hundred, one, ten } from "../../core/exact/exact";
import { mean, sum } from "../../core/exact/lists";
import { densityAt } from "../../core/batch/density";
import { oilMass } from "../../core/batch/oil-mass";
import { pureForAcid } from "../../core/batch/catalyst";
import { isProblem } from "../../core/problem/problem";
import { as, type AcidValue, type Kilogram } from "../../core/quantity/quantity";
import { amountUnits, type AmountUnit } from "../../core/quantity/units";
import { type Base, bases } from "../../core/reference/bases";
import { acidValueDefinition } from "../../core/reference/compounds";
import { type FattyAcid, oleic } from "../../core/reference/fatty-acids";
import { oilOfDensity } from "../../core/reference/oils";
import type { RoleId } from "../recognising/roles";
import type { Readings } from "./readings";

/** How the working goes, where it is not the right way. */
export interface Ways {
  readonly average?: "zeros";
  readonly blank?: "ignored" | "added";
  readonly strength?: "percent";
  readonly sampleDensity?: "one";
  readonly acid?: FattyAcid;
  /** What % FFA is multiplied by where it goes wrong by a hundredfold. */
  readonly ffaScale?: Exact;
  readonly oilDensity?: "one";
  readonly gallon?: "other";
  readonly acidPart?: "by-charge" | "left-out";
  readonly otherBase?: Base;
  readonly assay?: "ignored" | "multiplied" | "over-hundred" | "under-hundred";
  /** Ways that are right too: a titrant weighed from the same lye, a charge as weighed. */
  readonly strengthAsWeighed?: boolean;
  readonly chargeAsWeighed?: boolean;
  readonly atTemperature?: boolean;
}

/** Figures the sheet holds that stand in for their working. */
export type From = ReadonlyMap<RoleId, Exact>;
export const fromNothing: From = new Map();

type Figure = Exact | undefined;

const kilogramsPerLitre = (r: Readings, w: Ways): Exact => {
  if (w.oilDensity === "one") return one;
  const found = densityAt(
    r.oil,
    w.atTemperature && r.temperature ? as("C", r.temperature) : undefined,
  );
  return isProblem(found) ? r.oil.density : found;
};

const filled = (list: readonly Figure[]): Exact[] => list.filter((each) => each !== undefined);

export function meanTitre(r: Readings, w: Ways): Figure {
  const titres = filled(r.titres);
  if (titres.length === 0) return undefined;
  return w.average === "zeros" ? sum(titres).div(r.titres.length) : mean(titres);
}

const meanBlank = (r: Readings): Exact | undefined =>
  r.blanks === undefined || r.blanks.length === 0 ? undefined : mean(r.blanks);

function lessBlank(r: Readings, w: Ways, titre: Exact): Exact {
  const blank = meanBlank(r);
  if (!blank || w.blank === "ignored") return titre;
  return w.blank === "added" ? titre.plus(blank) : titre.minus(blank);
}

export function correctedTitre(r: Readings, w: Ways, from: From): Figure {
  const held = from.get("correctedTitre");
  if (held) return held;
  const titre = from.get("meanTitre") ?? meanTitre(r, w);
  return titre && lessBlank(r, w, titre);
}

/** mol/L. A percent taken for mol/L: 1 g/L is 0.1 %. */
export function molarity(r: Readings, w: Ways): Figure {
  if (w.strength === "percent" && r.strength) return r.strength.div(ten);
  if (r.molarity) return r.molarity;
  if (!r.strength || !r.titrantBase) return undefined;
  const pure = w.strengthAsWeighed && r.assay ? r.strength.times(r.assay).div(hundred) : r.strength;
  return pure.div(r.titrantBase.molarMass);
}

/** g of the sample of one titre. */
function sampleMass(r: Readings, w: Ways, at: number): Figure {
  const weighed = r.masses[at] ?? r.masses[0];
  if (weighed) return weighed;
  if (!r.volume) return undefined;
  return w.sampleDensity === "one" ? r.volume : r.volume.times(kilogramsPerLitre(r, {}));
}

/** mL of titrant for each gram of oil: of each titre with its own mass, or of the corrected titre. */
function netPerGram(r: Readings, w: Ways, from: From): Figure {
  const hasOwn = new Set(r.masses.map((mass) => mass?.toString())).size > 1;
  const isFromHeld = from.has("correctedTitre") || from.has("meanTitre");
  if (hasOwn && !isFromHeld) {
    const ratios = r.titres.flatMap((titre, at) => {
      const mass = r.masses[at];
      return titre && mass ? [lessBlank(r, w, titre).div(mass)] : [];
    });
    return ratios.length > 0 ? mean(ratios) : undefined;
  }
  const net = correctedTitre(r, w, from);
  const mass = hasOwn ? mean(filled(r.masses)) : sampleMass(r, w, 0);
  return net && mass ? net.div(mass) : undefined;
}

/** Has this row anything to work an acid value out of? */
export const hasTitration = (r: Readings): boolean => filled(r.titres).length > 0;

const acidValueOfFfa = (ffa: Exact, acid: FattyAcid): Exact =>
  ffa.times(ten).times(acidValueDefinition).div(acid.reportedMass);

export function acidValue(r: Readings, w: Ways, from: From): Figure {
  const held = from.get("acidValue");
  if (held) return held;
  const ffa = from.get("ffa");
  if (ffa) return acidValueOfFfa(ffa.times(w.ffaScale ?? one), oleic);
  const net = netPerGram(r, w, from);
  const c = molarity(r, w);
  if (net && c) return acidValueDefinition.times(c).times(net);
  if (r.ofLot?.acidValue) return r.ofLot.acidValue;
  const given = r.held.get("acidValue")?.value;
  const givenFfa = r.held.get("ffa")?.value;
  return given ?? (givenFfa && acidValueOfFfa(givenFfa, oleic));
}

export function ffaPercent(r: Readings, w: Ways, from: From): Figure {
  const value = acidValue(r, w, from);
  const acid = w.acid ?? oleic;
  return value
    ?.times(acid.reportedMass)
    .div(ten.times(acidValueDefinition))
    .times(w.ffaScale ?? one);
}

const gallons: Readonly<Record<string, string>> = { us_gal: "uk_gal", uk_gal: "us_gal" };
const otherGallon = (unit: AmountUnit): AmountUnit =>
  amountUnits.find(({ name }) => name === gallons[unit.name]) ?? unit;

const unitIn = (r: Readings, w: Ways): AmountUnit | undefined =>
  r.amount && (w.gallon === "other" ? otherGallon(r.amount.unit) : r.amount.unit);

/** kg of oil. */
export function kilograms(r: Readings, w: Ways, from: From): Figure {
  const held = from.get("oilMass");
  if (held) return held;
  const unit = unitIn(r, w);
  if (!r.amount || !unit) return undefined;
  const oil = w.oilDensity === "one" ? oilOfDensity(as("kg/L", one)) : r.oil;
  const warm = w.atTemperature && r.temperature ? as("C", r.temperature) : undefined;
  const found = oilMass(r.amount.value, unit, oil, warm);
  return isProblem(found) ? undefined : found;
}

/** L of oil. */
export function litres(r: Readings, w: Ways, from: From): Figure {
  const unit = unitIn(r, w);
  if (r.amount && unit?.measures === "volume") return r.amount.value.times(unit.factor);
  return kilograms(r, w, from)?.div(kilogramsPerLitre(r, w));
}

/** g of pure base for the reaction. */
export function pureReaction(r: Readings, w: Ways, from: From): Figure {
  if (!r.charge) return undefined;
  const { value, per } = r.charge;
  if (per === "g/L") return litres(r, w, from)?.times(value);
  const mass = kilograms(r, w, from);
  return mass?.times(per === "%" ? value.times(ten) : value);
}

/** A percentage worked out with another acid's mass, or a right one that is read as another acid's. */
const withAcid = (value: Exact, { reportedMass }: FattyAcid, isGiven: boolean): Exact =>
  isGiven
    ? value.times(oleic.reportedMass).div(reportedMass)
    : value.times(reportedMass).div(oleic.reportedMass);

/** g of pure base for the acid. */
export function pureAcid(r: Readings, w: Ways, from: From): Figure {
  if (w.acidPart === "left-out") return exact(0);
  if (w.acidPart === "by-charge") {
    const share = from.get("ffa") ?? ffaPercent(r, w, from);
    const reaction = pureReaction(r, w, from);
    return share && reaction ? share.div(hundred).times(reaction) : undefined;
  }
  const value = acidValue(r, w, from);
  const mass = kilograms(r, w, from);
  const base = w.otherBase ?? r.base;
  if (!value || !mass || !base) return undefined;
  const given = w.ffaScale && !from.has("ffa") ? value.times(w.ffaScale) : value;
  // The dose starts from a percentage that was worked out with another acid's mass.
  const meant = w.acid ? withAcid(given, w.acid, from.has("ffa")) : given;
  return pureForAcid(mass as Kilogram, meant as AcidValue, base);
}

/** Pure base as it is weighed. */
export function asWeighed(r: Readings, w: Ways, pure: Exact): Figure {
  if (!r.assay) return undefined;
  switch (w.assay) {
    case "ignored":
      return pure;
    case "multiplied":
      return pure.times(r.assay).div(hundred);
    case "over-hundred":
      return pure.div(r.assay);
    case "under-hundred":
      return pure.times(hundred).times(hundred).div(r.assay);
    default:
      return pure.times(hundred).div(r.assay);
  }
}

/**
 * g of lye as weighed, for acid and reaction. Doses that the sheet holds stand in `from` as pure, a
 * dose for a litre as weighed.
 */
export function lye(r: Readings, w: Ways, from: From): Figure {
  const rate = from.get("catalystRate");
  if (rate) return litres(r, w, from)?.times(rate);
  const acid = from.get("acidDose") ?? pureAcid(r, w, from);
  const reaction = from.get("reactionDose") ?? pureReaction(r, w, from);
  if (!acid || !reaction) return undefined;
  if (!w.chargeAsWeighed) return asWeighed(r, w, acid.plus(reaction));
  return asWeighed(r, w, acid)?.plus(reaction);
}

export const otherBases = (base: Base): Base[] => bases.filter(({ name }) => name !== base.name);
