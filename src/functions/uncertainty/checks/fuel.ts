/** Checks of the finished fuel, of its water, of methoxide's warmth and of the probe. */
import { temperatureRise } from "../../../core/batch/mixing";
import { waterFromBase } from "../../../core/batch/products";
import { type Exact, exact } from "../../../core/exact/exact";
import { againstLimit } from "../../../core/fuel/against-limit";
import { conversion, glycerolPercent } from "../../../core/fuel/glycerol";
import { baseInFuel, metalInFuel, soapInFuel } from "../../../core/fuel/in-fuel";
import { lossOnHeating, waterFromGas } from "../../../core/fuel/water-measured";
import { isProblem, type Outcome } from "../../../core/problem/problem";
import { as, quantity } from "../../../core/quantity/quantity";
import { type Base, baseNamed } from "../../../core/reference/bases";
import { fuelMost } from "../../../core/reference/fuel-limits";
import { oilNotNamed } from "../../../core/reference/oils";
import { endPoint } from "../../../core/titration/probe";
import type { Check } from "./check";

/** A check shows a figure even when the core refuses: then none agrees. */
const figure = (found: Outcome<Exact>): number => (isProblem(found) ? 0 : found.toNumber());

const NaOH = baseNamed("NaOH") as Base;
const KOH = baseNamed("KOH") as Base;
const percent = (value: string) => quantity("%", value);
const g = (value: string) => quantity("g", value);

/** Hydrochloric acid of 0.01 mol/L. */
const acid = (millilitres: string, grams: string) => ({
  titres: [quantity("mL", millilitres)],
  blanks: [],
  molarity: quantity("mol/L", "0.01"),
  sampleMass: g(grams),
});

/** Silver nitrate of 0.1 mol/L into 2.433 mmol of chloride, V. */
const chloride =
  "5 .062 15 .085 20 .107 22 .123 23 .138 23.5 .146 23.8 .161 24 .174 24.1 .183 24.2 .194 24.3 .233 24.4 .316 24.5 .34 24.6 .351 24.7 .358 25 .373";

function probed(): number {
  const found = chloride.split(" ").map(exact);
  const points = found.flatMap((reading, at) => {
    const volume = found[at - 1];
    return at % 2 === 1 && volume ? [[as("mL", volume), reading] as const] : [];
  });
  const end = endPoint(points);
  return isProblem(end) ? 0 : end.volume.toNumber();
}

export const fuelChecks: readonly Check[] = [
  {
    check: "soap, 1.00 mL of 0.01 mol/L on 40 g, mg/kg of sodium oleate",
    source: "aocsCc17",
    where: "factor 304400",
    expected: "76.1",
    compute: () => figure(soapInFuel(acid("1.00", "40"), NaOH)),
  },
  {
    check: "free base, 0.40 mL of 0.01 mol/L on 6.00 g, mg/kg of KOH",
    source: "nrel36240",
    where: "factor 56.1",
    expected: "37.4",
    compute: () => figure(baseInFuel(acid("0.40", "6.00"), KOH)),
  },
  {
    check: "potassium in 41.0 mg/kg of its oleate: the limit, mg/kg",
    source: "en14214",
    where: "group I metals",
    expected: "5.0",
    compute: () => metalInFuel(quantity("mg/kg", "41.0"), KOH, quantity("mg/kg", "0")).toNumber(),
  },
  {
    check: "guard band of a standard uncertainty of 1, 95 % (within 0.4 %)",
    source: "jcgm106",
    where: "Table 1, z",
    expected: "1.64",
    within: 0.004,
    compute: () => {
      const { upper } = againstLimit(fuelMost.acid, exact("1.96"), fuelMost.acid);
      return upper.minus(fuelMost.acid).toNumber();
    },
  },
  {
    check: "glycerol, 1 mL of 1 mol/L thiosulfate on 1 g, %",
    source: "aocsCa14",
    where: "factor",
    expected: "2.302",
    compute: () =>
      figure(
        glycerolPercent(
          [quantity("mL", "1")],
          [quantity("mL", "2")],
          quantity("mol/L", "1"),
          g("1"),
        ),
      ),
  },
  {
    check: "conversion at 0.24 % of total glycerol, none of it free, %",
    source: "nrel36240",
    where: "97.7 %",
    expected: "97.7",
    compute: () => figure(conversion(percent("0.24"), percent("0"), oilNotNamed)),
  },
  {
    check: "water by drying, dish 45.312 g, 65.812 to 65.790 g, %",
    source: "iso662",
    where: "by hand",
    expected: "0.1073",
    compute: () => figure(lossOnHeating(g("45.312"), g("65.812"), g("65.790"))),
  },
  {
    check: "water on 100 g that gives 22.414 L of gas, 0 C and 101.325 kPa, %",
    source: "codataGas",
    where: "a mole",
    expected: "18.015",
    compute: () =>
      figure(
        waterFromGas(
          quantity("kPa", "101.325"),
          quantity("L", "22.414"),
          quantity("C", "0"),
          g("100"),
        ),
      ),
  },
  {
    check: "water from 1000 g of KOH in methanol, kg",
    source: "byHand",
    where: "18.015 / 56.105",
    expected: "0.3211",
    compute: () => waterFromBase(g("1000"), KOH).toNumber(),
  },
  {
    check: "warmth of 909 g in 24.9 L, by 10 g in 0.100 L that rose 22 C, C",
    source: "byHand",
    where: "lye a litre",
    expected: "8.0",
    compute: () => {
      const trial = { lye: g("10"), methanol: quantity("L", "0.100"), rise: quantity("C", "22") };
      return temperatureRise(g("909"), quantity("L", "24.9"), trial).toNumber();
    },
  },
  {
    check: "end point of silver nitrate into chloride, mL",
    source: "potentiometric",
    expected: "24.34",
    compute: probed,
  },
];
