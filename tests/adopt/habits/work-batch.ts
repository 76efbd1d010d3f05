/** From the acid of the oil to the lye, as this maker works it out. */
import { number, over, plus, product, times, type Worked } from "./expression";
import type { Habit } from "./habit";
import type { Planted } from "./mistakes";
import { type Day, kilogramsIn, litresIn, molarMasses } from "./readings";
import type { Sheet } from "./sheet";
import type { Acid } from "./work-titration";

/** Published coefficients, g of base for each g of acid (commonly cited). */
const coefficients = { KOH: 0.197, NaOH: 0.144, NaOCH3: 0.19 } as const;
const gramsIn = { g: 1, kg: 1000, lb: 453.59237, oz: 28.349523125 } as const;

function oilOf(
  habit: Habit,
  day: Day,
  sheet: Sheet,
  mistake: Planted | undefined,
): { litres: Worked; kilograms: Worked } {
  const { oilUnit } = habit;
  const oil = sheet.read("oil", day.oil);
  const density = sheet.given(
    habit.density.place === "nowhere" ? "oil density" : "density",
    habit.density.oil,
  );
  if (oilUnit === "kg" || oilUnit === "lb") {
    const mass = oilUnit === "kg" ? oil : times(oil, number(kilogramsIn.lb));
    const kilograms = sheet.put("kilograms", mass);
    return {
      kilograms,
      litres: mistake === "kilograms as litres" ? kilograms : over(kilograms, density),
    };
  }
  const other = oilUnit === "US gal" ? "imp gal" : "US gal";
  const factor = litresIn[mistake === "other gallon" ? other : oilUnit];
  const litres = factor === 1 ? oil : times(oil, number(factor));
  const kilograms = sheet.put(
    "kilograms",
    mistake === "litres as kilograms" ? litres : times(litres, density),
  );
  return { litres: mistake === "kilograms as litres" ? kilograms : litres, kilograms };
}

/** g of lye for the acid, and whether that is pure. */
function forAcid(
  habit: Habit,
  acid: Acid,
  oil: { litres: Worked; kilograms: Worked },
  sheet: Sheet,
  mistake: Planted | undefined,
): { grams: Worked; isPure: boolean } {
  const { base, titrant } = habit;
  const otherBase = base === "KOH" ? "NaOH" : "KOH";
  const used = mistake === "factor of the other base" ? otherBase : base;
  const mass = number(molarMasses[used]);
  if (habit.acidFrom === "titre") {
    const strength = sheet.given("strength", titrant.value);
    const grams =
      titrant.unit === "mol/L"
        ? product(strength, mass)
        : titrant.unit === "% w/v"
          ? times(strength, number(10))
          : strength;
    const perLitre = over(times(acid.net, grams), sheet.given("sample", habit.sample.size));
    const isOther = used !== titrant.base && titrant.unit !== "mol/L";
    const ratio = isOther
      ? over(times(perLitre, mass), number(molarMasses[titrant.base]))
      : perLitre;
    return { grams: times(ratio, oil.litres), isPure: !titrant.isAsWeighed };
  }
  if (habit.acidFrom === "acid value" && acid.acidValue)
    return {
      grams: over(product(oil.kilograms, acid.acidValue, mass), number(habit.acidConstant)),
      isPure: true,
    };
  const ffa = acid.ffa ?? number(NaN);
  const scale = mistake === "percent as fraction" ? 1000 : 10;
  const factor =
    habit.acidFrom === "ffa coefficient"
      ? number(coefficients[used])
      : over(mass, number(habit.acidMass));
  return { grams: product(oil.kilograms, number(scale), ffa, factor), isPure: true };
}

function forReaction(
  habit: Habit,
  oil: { litres: Worked; kilograms: Worked },
  sheet: Sheet,
): Worked {
  const { per, value } = habit.charge;
  const charge = sheet.given("charge", per === "percent format" ? value / 100 : value);
  if (per === "g/L") return times(charge, oil.litres);
  return product(charge, oil.kilograms, number(per === "g/kg" ? 1 : per === "%" ? 10 : 1000));
}

/** Grams of lye as they are to be weighed out. */
export function workBatch(
  habit: Habit,
  day: Day,
  acid: Acid,
  sheet: Sheet,
  mistake: Planted | undefined,
  staleGrams: number,
): number {
  const oil = oilOf(habit, day, sheet, mistake);
  const assay = over(sheet.given("assay", habit.assay), number(100));
  const pure = (part: Worked, isPure: boolean): Worked => (isPure ? part : times(part, assay));
  const weighed = (part: Worked, isPure: boolean): Worked => {
    if (!isPure || mistake === "assay forgotten") return part;
    return mistake === "assay multiplied" ? times(part, assay) : over(part, assay);
  };
  const chargeIsPure = !habit.charge.isAsWeighed;
  const reaction = forReaction(habit, oil, sheet);
  const ffa = acid.ffa ?? number(0);
  const right = forAcid(habit, acid, oil, sheet, mistake);
  const given =
    mistake === "trade rule"
      ? { grams: over(times(ffa, reaction), number(100)), isPure: chargeIsPure }
      : mistake === "nothing for the acid"
        ? { grams: number(0), isPure: true }
        : right;
  const isPartPure = habit.partsAre === "pure";
  const written = (part: Worked, isPure: boolean): Worked =>
    isPartPure ? pure(part, isPure) : weighed(part, isPure);
  const isForLitre = habit.parts === "for a litre";
  const inPart = (part: Worked): Worked => (isForLitre ? over(part, oil.litres) : part);
  const scale = isForLitre ? 1 : 1 / gramsIn[habit.doseUnit];
  const hasParts = habit.parts !== "none";
  const whole = (
    key: "acid" | "reaction",
    part: Worked,
    isPure: boolean,
  ): { grams: Worked; isPure: boolean } => {
    if (!hasParts) return { grams: part, isPure };
    const put = sheet.putScaled(key, inPart(written(part, isPure)), 1 / scale);
    return { grams: isForLitre ? times(put, oil.litres) : put, isPure: isPartPure };
  };
  const one = whole("acid", given.grams, given.isPure);
  const two = whole("reaction", reaction, chargeIsPure);
  const sum =
    one.isPure === two.isPure
      ? weighed(plus(one.grams, two.grams), one.isPure)
      : plus(weighed(one.grams, one.isPure), weighed(two.grams, two.isPure));
  const rated = habit.hasRate ? times(sheet.put("rate", over(sum, oil.litres)), oil.litres) : sum;
  const slipped =
    mistake === "stale copied dose"
      ? number(staleGrams)
      : mistake === "decimal slip"
        ? number(rated.value * 10)
        : rated;
  const total = sheet.putScaled("total", slipped, gramsIn[habit.doseUnit]);
  const isOther = mistake === "other amount weighed";
  if (habit.isWeighedWritten)
    sheet.read(
      "weighed",
      sheet.rounded("weighed", (total.value / gramsIn[habit.doseUnit]) * (isOther ? 0.8 : 1)),
    );
  if (habit.extras.methanol === "L") sheet.put("methanol", times(oil.litres, number(0.22)));
  if (habit.extras.methanol === "kg") sheet.put("methanol", times(oil.kilograms, number(0.22)));
  return isOther ? total.value * 0.8 : total.value;
}
