/** The right figures of a row, worked out by the core in exact decimals: what a report says should be there. */
import { exact, type Exact, hundred } from "../../core/exact/exact";
import { mean } from "../../core/exact/lists";
import { pureForAcid, pureForReaction } from "../../core/batch/catalyst";
import { chargePercent } from "../../core/batch/conversions";
import { oilMass, sampleGrams } from "../../core/batch/oil-mass";
import { isProblem, type Outcome } from "../../core/problem/problem";
import {
  type AcidValue,
  as,
  type Gram,
  type Kilogram,
  type Millilitre,
  type MolePerLitre,
  type Percent,
  quantity,
} from "../../core/quantity/quantity";
import { correctedTitre } from "../../core/titration/corrected-titre";
import { ffaFromAcidValue } from "../../core/titration/free-fatty-acid";
import { meanAcidValue, type Replicate } from "../../core/titration/mean-acid-value";
import { molarityByWeighing } from "../../core/titration/titrant";
import type { RoleId } from "../recognising/roles";
import type { Readings } from "./readings";
import { givenAcidValue } from "./worked";

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

/** By role; doses in grams as weighed. A role is missing where something is missing for it. */
export function coreFigures(r: Readings): ReadonlyMap<RoleId, number> {
  const titres = millilitres(r.titres);
  const value = acidValueOf(r);
  const mass = massOf(r);
  const charge = chargeOf(r);
  const moleForMole = mass && value && r.base && pureForAcid(mass, value, r.base);
  const acid = r.lyeForAcid === undefined ? moleForMole : moleForMole?.times(exact(r.lyeForAcid));
  const reaction = mass && charge && pureForReaction(mass, charge);
  const weighed = (pure: Maybe<Exact>): Maybe<Exact> =>
    r.assay === undefined ? undefined : pure?.times(hundred).div(exact(r.assay));
  const all: readonly (readonly [RoleId, Maybe<Exact>])[] = [
    ["meanTitre", titres.length > 0 ? mean(titres) : undefined],
    [
      "correctedTitre",
      titres.length > 0 ? known(correctedTitre(titres, millilitres(r.blanks ?? []))) : undefined,
    ],
    ["acidValue", value],
    ["ffa", value && known(ffaFromAcidValue(value))],
    ["oilMass", mass],
    ["acidDose", weighed(acid)],
    ["reactionDose", weighed(reaction)],
    ["catalyst", weighed(acid && reaction?.plus(acid))],
  ];
  return new Map(
    all.flatMap(([role, figure]) => (figure ? [[role, figure.toNumber()] as const] : [])),
  );
}
