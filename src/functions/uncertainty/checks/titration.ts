/** Checks of the titration itself: standards, and definitions that are exact. */
import { isProblem, type Outcome } from "../../../core/problem/problem";
import type { Exact } from "../../../core/exact/exact";
import { quantity } from "../../../core/quantity/quantity";
import {
  kilogramsInPound,
  litresInImperialGallon,
  litresInUsGallon,
} from "../../../core/quantity/units";
import { baseNamed } from "../../../core/reference/bases";
import { oleicAcid, potassiumHydrogenPhthalate } from "../../../core/reference/compounds";
import { titrantExpansion } from "../../../core/reference/liquids";
import { molarMass } from "../../../core/reference/molar-mass";
import { acidValue } from "../../../core/titration/acid-value";
import { acidValueFromFfa, ffaPercent } from "../../../core/titration/free-fatty-acid";
import { temperatureCorrected } from "../../../core/titration/titrant";
import type { Check } from "./check";

const mL = (value: string) => quantity("mL", value);
const g = (value: string) => quantity("g", value);
const molar = (value: string) => quantity("mol/L", value);

/** A check shows a figure even when the core refuses: then none agrees. */
const figure = (found: Outcome<Exact>): number => (isProblem(found) ? 0 : found.toNumber());

const ffa = (titre: string, strength: string, mass: string) => () =>
  figure(ffaPercent(mL(titre), molar(strength), g(mass)));

/** Grams of a base for one gram of oleic acid: mole for mole. */
const perGramOfAcid = (base: string) => () =>
  (baseNamed(base)?.molarMass ?? molarMass("")).div(oleicAcid).toNumber();

export const titrationChecks: readonly Check[] = [
  {
    check: "FFA from 10.00 mL of 0.1 mol/L on 28.2 g, %",
    source: "aocsCa5a",
    expected: "1.000",
    compute: ffa("10.00", "0.1", "28.2"),
  },
  {
    check: "FFA from 30.00 mL of 0.25 mol/L on 7.05 g, %",
    source: "aocsCa5a",
    expected: "30.00",
    compute: ffa("30.00", "0.25", "7.05"),
  },
  {
    check: "FFA from 12.50 mL of 1.0 mol/L on 3.525 g, %",
    source: "aocsCa5a",
    expected: "100.0",
    compute: ffa("12.50", "1.0", "3.525"),
  },
  {
    check: "acid value of 1 % FFA as oleic, mg KOH/g",
    source: "aocsCa5a",
    where: "factor",
    expected: "1.99",
    compute: () => figure(acidValueFromFfa(quantity("%", "1"))),
  },
  {
    check: "acid value, 5.20 mL of 0.1003 mol/L on 20.12 g, mg KOH/g",
    source: "en14104",
    where: "clause 10, formula; worked by hand",
    expected: "1.45",
    compute: () => figure(acidValue(mL("5.20"), molar("0.1003"), g("20.12"))),
  },
  {
    check: "10.00 mL of alcoholic titrant read at 28 C, set at 20 C, mL",
    source: "en14104",
    where: "clause 10, note; worked by hand",
    expected: "9.9120",
    compute: () =>
      temperatureCorrected(
        mL("10.00"),
        quantity("C", "28"),
        quantity("C", "20"),
        titrantExpansion.alcohol,
      ).toNumber(),
  },
  {
    check: "molar mass of potassium hydrogen phthalate, g/mol",
    source: "ciaaw",
    where: "sum by hand",
    expected: "204.2223",
    compute: () => potassiumHydrogenPhthalate.toNumber(),
  },
  {
    check: "molar mass of KOH, g/mol",
    source: "ciaaw",
    where: "sum by hand",
    expected: "56.1053",
    compute: () => molarMass("KOH").toNumber(),
  },
  {
    check: "KOH for the acid, g per g of FFA (within 2 %)",
    source: "vanGerpen",
    expected: "0.197",
    within: 0.02,
    compute: perGramOfAcid("KOH"),
  },
  {
    check: "NaOH for the acid, g per g of FFA (within 2 %)",
    source: "vanGerpen",
    expected: "0.144",
    within: 0.02,
    compute: perGramOfAcid("NaOH"),
  },
  {
    check: "NaOCH3 for the acid, g per g of FFA (within 2 %)",
    source: "vanGerpen",
    expected: "0.190",
    within: 0.02,
    compute: perGramOfAcid("NaOCH3"),
  },
  {
    check: "litres in a US gallon",
    source: "internationalYard",
    expected: "3.785411784",
    compute: () => litresInUsGallon.toNumber(),
  },
  {
    check: "litres in an imperial gallon",
    source: "imperialGallon",
    expected: "4.54609",
    compute: () => litresInImperialGallon.toNumber(),
  },
  {
    check: "kilograms in a pound",
    source: "internationalYard",
    expected: "0.45359237",
    compute: () => kilogramsInPound.toNumber(),
  },
];
