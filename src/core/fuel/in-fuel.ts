/** What is left in the fuel by two end points in one flask: free base, then soap (as AOCS Cc 17-95). */
import { atMost } from "../exact/compare";
import { exact, thousand } from "../exact/exact";
import {
  as,
  type Gram,
  type GramPerMole,
  type MilligramPerKilogram,
  type Millilitre,
  type MolePerLitre,
} from "../quantity/quantity";
import { isProblem, type Outcome, problem } from "../problem/problem";
import { atomicWeights } from "../reference/atomic-weights";
import type { Base } from "../reference/bases";
import { limits } from "../reference/limits";
import { soapMolarMass } from "../batch/soap";
import { correctedTitre } from "../titration/corrected-titre";

const whole = exact(limits.inFuel.to);

/** How one end point was reached: hydrochloric acid, on so much fuel. */
export interface AcidTitration {
  readonly titres: readonly Millilitre[];
  readonly blanks: readonly Millilitre[];
  readonly molarity: MolePerLitre;
  readonly sampleMass: Gram;
}

/** mg/kg of what meets the acid mole for mole; more than there is fuel is a slip. */
function inFuel(
  titration: AcidTitration,
  perMole: GramPerMole,
  called: string,
): Outcome<MilligramPerKilogram> {
  const { titres, blanks, molarity, sampleMass } = titration;
  const net = correctedTitre(titres, blanks);
  if (isProblem(net)) {
    const { fields } = net;
    return fields.code === "titre-equals-blank" ? problem({ ...fields, sought: called }) : net;
  }
  const given = net.times(molarity).times(perMole).times(thousand).div(sampleMass);
  return atMost(given, whole)
    ? as("mg/kg", given)
    : problem({ code: "too-much", called, given, unit: "mg/kg", limit: whole });
}

/**
 * Soap in the fuel, as oleate of the base's metal: (V - B) c M 1000 / m. Carbonate counts as soap.
 * @returns mg/kg
 * @example 0.20 mL of 0.01 mol/L on 100 g, NaOH: 6.089 mg/kg
 */
export const soapInFuel = (titration: AcidTitration, base: Base): Outcome<MilligramPerKilogram> =>
  inFuel(titration, soapMolarMass(base), "soap");

/**
 * Free base in the fuel, by the first end point.
 * @returns mg/kg
 * @example 0.40 mL of 0.01 mol/L on 6 g, KOH: 37.404 mg/kg
 */
export const baseInFuel = (titration: AcidTitration, base: Base): Outcome<MilligramPerKilogram> =>
  inFuel(titration, base.molarMass, "free base");

/**
 * Sodium or potassium in the fuel: what the soap and the free base hold of it.
 * @param freeBase mg/kg; 0 where none was found
 * @returns mg/kg, to hold against 5 (EN 14214, ASTM D6751)
 * @example 66.214 mg/kg of sodium oleate: 5 mg/kg
 */
export const metalInFuel = (
  soap: MilligramPerKilogram,
  base: Base,
  freeBase: MilligramPerKilogram,
): MilligramPerKilogram => {
  const metal = exact(atomicWeights[base.metal]);
  const ofSoap = soap.times(metal).div(soapMolarMass(base));
  return as("mg/kg", ofSoap.plus(freeBase.times(metal).div(base.molarMass)));
};
