/** The right figures of a row, worked out by the core in exact decimals: what a report says should be there. */
import { exact, type Exact, hundred } from "../../../core/exact/exact";
import { mean } from "../../../core/exact/lists";
import { once } from "./once";
import { pureForAcid, pureForReaction } from "../../../core/batch/catalyst";
import { chargePercent } from "../../../core/batch/conversions";
import { oilMass, sampleGrams } from "../../../core/batch/oil-mass";
import { isProblem, type Outcome } from "../../../core/problem/problem";
import {
  type AcidValue,
  as,
  type Gram,
  type Kilogram,
  type Millilitre,
  type MolePerLitre,
  type Percent,
  quantity,
} from "../../../core/quantity/quantity";
import { correctedTitre } from "../../../core/titration/corrected-titre";
import { ffaFromAcidValue } from "../../../core/titration/free-fatty-acid";
import { meanAcidValue, type Replicate } from "../../../core/titration/mean-acid-value";
import { molarityByWeighing } from "../../../core/titration/titrant";
import type { RoleId } from "../../recognising/roles";
import type { Readings } from "../reading/readings";
import { coefficientOf } from "./molar-masses";
import { givenAcidValue } from "./row-arithmetic";

type Maybe<Q> = Q | undefined;
const known = <Q>(found: Outcome<Q>): Maybe<Q> => (isProblem(found) ? undefined : found);

const millilitres = (list: readonly (number | undefined)[]): Millilitre[] =>
  list.flatMap((each) => (each === undefined ? [] : [quantity("mL", each)]));

function strength({ molarity, strength: grams, titrantBase }: Readings): Maybe<MolePerLitre> {
  if (molarity !== undefined) return quantity("mol/L", molarity);
  if (grams === undefined || !titrantBase) return undefined;
  return molarityByWeighing(quantity("g", grams), quantity("L", 1), titrantBase, as("%", hundred));
}

function replicates({ titres, masses, volume, oil, sampleOil = oil }: Readings): Replicate[] {
  const byVolume =
    volume === undefined ? undefined : known(sampleGrams(quantity("mL", volume), sampleOil));
  return titres.flatMap((titre, at): Replicate[] => {
    const own = masses[at] ?? masses[0];
    const mass = own === undefined ? byVolume : quantity("g", own);
    return titre === undefined || mass === undefined ? [] : [[quantity("mL", titre), mass as Gram]];
  });
}

function acidValueOf(r: Readings): Maybe<AcidValue> {
  const pairs = replicates(r);
  const molarity = strength(r);
  if (pairs.length > 0 && molarity)
    return known(meanAcidValue(pairs, millilitres(r.blanks ?? []), molarity));
  const given = r.ofLot?.acidValue ?? givenAcidValue(r);
  return given === undefined ? undefined : quantity("mg KOH/g", given);
}

const massOf = ({ amount, oil }: Readings): Maybe<Kilogram> =>
  amount && known(oilMass(exact(amount.value), amount.unit, oil));

/** The charge as percent of the oil's mass. */
function chargeOf({ charge, oil }: Readings): Maybe<Percent> {
  if (!charge) return undefined;
  if (charge.per === "%") return quantity("%", charge.value);
  if (charge.per === "g/kg") return as("%", exact(charge.value).div(10));
  return known(chargePercent(quantity("g/L", charge.value), as("%", hundred), oil));
}

/** Each worked out when it is first asked for; doses in grams as weighed. Undefined where something is missing. */
export function coreFigures(r: Readings): (role: RoleId) => number | undefined {
  const value = once(() => acidValueOf(r));
  const mass = once(() => massOf(r));
  const charge = once(() => chargeOf(r));
  const acid = once((): Maybe<Exact> => {
    const [kilograms, acidValue] = [mass(), value()];
    const moles = kilograms && acidValue && r.base && pureForAcid(kilograms, acidValue, r.base);
    return r.byCoefficient !== true || !r.base ? moles : moles?.times(exact(coefficientOf(r.base)));
  });
  const reaction = once((): Maybe<Exact> => {
    const [kilograms, percent] = [mass(), charge()];
    return kilograms && percent && pureForReaction(kilograms, percent);
  });
  const weighed = (pure: Maybe<Exact>): Maybe<Exact> =>
    r.assay === undefined ? undefined : pure?.times(hundred).div(exact(r.assay));
  const titres = millilitres(r.titres);
  const figure = (role: RoleId): Maybe<Exact> => {
    switch (role) {
      case "meanTitre":
        return titres.length > 0 ? mean(titres) : undefined;
      case "correctedTitre":
        return titres.length > 0
          ? known(correctedTitre(titres, millilitres(r.blanks ?? [])))
          : undefined;
      case "acidValue":
        return value();
      case "ffa": {
        const acidValue = value();
        return acidValue && known(ffaFromAcidValue(acidValue));
      }
      case "oilMass":
        return mass();
      case "acidDose":
        return weighed(acid());
      case "reactionDose":
        return weighed(reaction());
      case "catalyst": {
        const forAcid = acid();
        return weighed(forAcid && reaction()?.plus(forAcid));
      }
      default:
        return undefined;
    }
  };
  const told = new Map<RoleId, number | undefined>();
  return (role) => {
    if (!told.has(role)) told.set(role, figure(role)?.toNumber());
    return told.get(role);
  };
}
