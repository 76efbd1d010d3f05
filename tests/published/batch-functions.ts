/** What a published case about a batch may ask for. */
import { pureForAcid } from "../../src/core/batch/catalyst";
import { molarRatio } from "../../src/core/batch/conversions";
import { formerAmount } from "../../src/core/batch/former-amount";
import { methanolMass, methanolVolume } from "../../src/core/batch/methanol";
import { pretreatment } from "../../src/core/batch/pretreatment";
import { productsAtMost, waterFromAcid, waterFromBase } from "../../src/core/batch/products";
import { soap, soapMolarMass } from "../../src/core/batch/soap";
import { exact, hundred } from "../../src/core/exact/exact";
import { isProblem } from "../../src/core/problem/problem";
import { as, quantity } from "../../src/core/quantity/quantity";
import { atomicWeights } from "../../src/core/reference/atomic-weights";
import { baseNamed } from "../../src/core/reference/bases";
import { acidValueDefinition, oleicAcid } from "../../src/core/reference/compounds";
import { type Oil, oilNamed, oilNotNamed } from "../../src/core/reference/oils";
import { figure, found } from "./figure";

/** The acid value of pure oleic acid: a mole of KOH for each mole. */
const onlyAcid = as("mg KOH/g", acidValueDefinition.times(exact("1000")).div(oleicAcid));

const oilOf = (name: string | undefined): Oil =>
  name === undefined ? oilNotNamed : found(oilNamed(name));

export const batchFunctions = {
  /** Methanol of a molar ratio to triolein or another oil, % of the oil's mass. */
  methanolMassPercent: (given: { ratio: string; acidValue?: string; oil?: string }) =>
    figure(
      methanolMass(
        quantity("kg", "100"),
        quantity("mol/mol", given.ratio),
        given.acidValue === undefined ? undefined : quantity("mg KOH/g", given.acidValue),
        oilOf(given.oil),
      ),
    ),
  /** Litres of it for 100 litres of an oil of 0.915 kg/L. */
  methanolVolumePercent: (given: { ratio: string }) =>
    figure(
      methanolVolume(
        quantity("kg", "91.5"),
        quantity("mol/mol", given.ratio),
        undefined,
        oilNotNamed,
      ),
    ),
  ratioOfVolumePercent: (given: { percent: string }) =>
    figure(molarRatio(quantity("%", given.percent), oilNotNamed)),
  /** At most, from 100 kg of neutral oil. */
  productOf100: (given: { product: "biodiesel" | "glycerol" }) => {
    const made = productsAtMost(quantity("kg", "100"), quantity("mg KOH/g", "0"), oilNotNamed);
    return isProblem(made) ? NaN : made[given.product].toNumber();
  },
  /** Grams for each gram of oleic acid. */
  soapPerGramOfAcid: (given: { base: string }) =>
    soap(quantity("kg", "1"), onlyAcid, found(baseNamed(given.base))).toNumber(),
  waterPerGramOfAcid: () =>
    waterFromAcid(quantity("kg", "1"), onlyAcid, found(baseNamed("KOH"))).toNumber(),
  waterPerGramOfBase: (given: { base: string }) =>
    waterFromBase(quantity("g", "1000"), found(baseNamed(given.base))).toNumber(),
  /** The acid step for an oil that holds so much acid. */
  acidStep: (given: {
    ffaKilograms: string;
    finds: "methanol" | "sulfuricAcid" | "baseToCancel";
    base?: string;
  }) => {
    const pure = quantity("%", "100");
    const base = found(baseNamed(given.base ?? "KOH"));
    const made = pretreatment(quantity("kg", given.ffaKilograms), onlyAcid, base, pure, pure);
    return made[given.finds].toNumber();
  },
  /** Milligrams of soap in a kilogram that hold so many of its metal. */
  soapOfMetal: (given: { base: string; metal: string }) => {
    const base = found(baseNamed(given.base));
    const soapMass = soapMolarMass(base);
    return exact(given.metal).times(soapMass).div(atomicWeights[base.metal]).toNumber();
  },
  /** The rule of a fraction of the charge: how many times more lye the acid asks for. */
  neededOverFraction: (given: { base: string; gramsPerLitre: string }) => {
    const mass = quantity("kg", "0.915");
    const percent = exact("2");
    const value = as("mg KOH/g", onlyAcid.times(percent).div(hundred));
    const needed = pureForAcid(mass, value, found(baseNamed(given.base)));
    return needed.div(percent.div(hundred).times(given.gramsPerLitre)).toNumber();
  },
  /** A litre of oil at 0.915: what the acid and the charge leave of a former amount, %. */
  formerAmount: (given: {
    base: string;
    ffa: string;
    gramsPerLitre: string;
    finds: "chargeLeft" | "acidLeft";
  }) => {
    const charge = quantity("g", given.gramsPerLitre);
    const share = exact(given.ffa).div(hundred);
    const value = as("mg KOH/g", onlyAcid.times(share));
    const parts = {
      pureForAcid: pureForAcid(quantity("kg", "0.915"), value, found(baseNamed(given.base))),
      pureForReaction: charge,
      assay: quantity("%", "100"),
    };
    const former = as("g", charge.plus(charge.times(share)));
    return formerAmount(former, parts)[given.finds].times(hundred).toNumber();
  },
} as const;
