/** What stands in the rows of one maker's logbook, worked out with plain doubles from what was read. */
import type { Chance } from "../habits/chance";
import type { Meaning } from "./words/role-words";

export type Held = number | string;
export type Row = ReadonlyMap<Meaning, Held> & { readonly titres: readonly number[] };

export interface Maker {
  readonly sampleBy: "g" | "mL";
  readonly strengthBy: "mol/L" | "g/L";
  readonly base: "KOH" | "NaOH";
  readonly oilUnit: string;
  readonly doseUnit: string;
  readonly chargeUnit: "g/L" | "%";
  readonly replicates: number;
  readonly digits: number;
}

const molar = { KOH: 56.1053, NaOH: 39.9971 } as const;
const inLitres: Readonly<Record<string, number>> = {
  L: 1,
  "US gal": 3.785411784,
  "imp gal": 4.54609,
  kg: 1 / 0.915,
  lb: 0.45359237 / 0.915,
};
const inGrams: Readonly<Record<string, number>> = { g: 1, kg: 1000, lb: 453.59237, oz: 28.349523 };

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

export function makerOf(chance: Chance, isEnglish: boolean): Maker {
  const sampleBy = chance.of(["g", "mL"] as const);
  return {
    sampleBy,
    strengthBy: chance.of(["mol/L", "g/L"] as const),
    base: chance.of(["KOH", "KOH", "NaOH"] as const),
    oilUnit: isEnglish
      ? chance.of(["L", "L", "US gal", "imp gal", "kg"])
      : chance.of(["L", "L", "kg"]),
    doseUnit: chance.of(["g", "g", "g", "kg"]),
    chargeUnit: chance.of(["g/L", "g/L", "%"] as const),
    replicates: chance.of([1, 2, 2, 3, 3, 4]),
    digits: chance.of([1, 2, 2]),
  };
}

/** Rows in their order; what does not change from row to row is drawn once. */
export function rowsOf(chance: Chance, maker: Maker, count: number): Row[] {
  const isStrong = maker.strengthBy === "mol/L";
  const molarity = isStrong ? chance.of([0.1, 0.1, 0.05, 0.025, 0.1013, 0.2]) : 0;
  const strength = isStrong ? 0 : chance.of([1, 1, 1, 2, 4]);
  const moles = isStrong ? molarity : strength / molar[maker.base];
  const isLarge = moles > 0.04;
  const sample = isLarge ? chance.of([5, 10, 20]) : chance.of([1, 1, 2, 5]);
  const charge = maker.base === "KOH" ? chance.of([7, 7.5, 8, 9]) : chance.of([3.5, 5, 5.5]);
  const assay = maker.base === "KOH" ? chance.of([90, 85, 88.5]) : chance.of([97, 98, 99]);
  const blank = chance.between(0.04, 0.3, 2);
  const first = chance.whole(45_300, 46_900);
  const ownBlank = chance.yes(0.6);
  return Array.from({ length: count }, (_, at) => {
    const portion =
      maker.sampleBy === "g" && isLarge ? round(sample + chance.between(-0.4, 0.4, 2), 2) : sample;
    const grams = maker.sampleBy === "g" ? portion : portion * 0.915;
    const percent = chance.between(0.4, 5, 3);
    const net = (percent / 28.2) * (grams / moles);
    const zero = ownBlank ? round(blank + chance.between(-0.03, 0.03, 2), 2) : blank;
    const titres = Array.from({ length: maker.replicates }, () =>
      round(net + zero + chance.between(-0.06, 0.06, 2), maker.digits),
    );
    const mean = titres.reduce((sum, each) => sum + each, 0) / titres.length;
    const corrected = Math.max(0.02, mean - zero);
    const acidValue = (56.1 * moles * corrected) / grams;
    const ffa = (28.2 * moles * corrected) / grams;
    const litres = chance.whole(4, 60) * 10;
    const amount = round(litres / (inLitres[maker.oilUnit] ?? 1), 0);
    const liters = amount * (inLitres[maker.oilUnit] ?? 1);
    const kilograms = liters * 0.915;
    const scale = inGrams[maker.doseUnit] ?? 1;
    const acid = (kilograms * (acidValue / 56.1) * molar[maker.base]) / (assay / 100);
    const reaction = (liters * charge) / (assay / 100);
    const digits = maker.doseUnit === "g" ? 0 : 2;
    const dose = (value: number): number => round(value / scale, digits);
    const row = new Map<Meaning, Held>([
      ["number", at + 1],
      ["date", first + at * chance.whole(1, 4)],
      ["lot", chance.of(["NQ", "SW", "TW", "F"]) + String(at + 11)],
      ["batch", `B${String(101 + at)}`],
      ["oil", chance.of(["fryer oil", "rape", "sunflower", "mixed"])],
      ["operator", chance.of(["Mate", "Engineer", "Deckhand", "Cook"])],
      ["stage", chance.of(["raw", "dried", "filtered"])],
      ["titrantBase", maker.base],
      ["indicator", chance.of(["phenolphthalein", "turmeric"])],
      ["molarity", molarity],
      ["strength", strength],
      ["blank", zero],
      ["meanTitre", round(mean, 3)],
      ["correctedTitre", round(corrected, 3)],
      ["sampleMass", portion],
      ["sampleVolume", portion],
      ["acidValue", round(acidValue, 2)],
      ["ffa", round(ffa, 2)],
      ["oilAmount", amount],
      ["oilMass", round(kilograms, 1)],
      ["amountUnit", maker.oilUnit],
      ["density", 0.915],
      ["temperature", chance.whole(15, 62)],
      ["base", maker.base],
      ["lyeLot", chance.of(["K-7", "K-8"])],
      ["assay", assay],
      ["baseCharge", maker.chargeUnit === "%" ? round(charge / 9.15, 2) : charge],
      ["acidDose", dose(acid)],
      ["reactionDose", dose(reaction)],
      ["catalyst", dose(acid + reaction)],
      ["catalystRate", round((acid + reaction) / liters, 2)],
      [
        "methanol",
        round(
          (liters * 0.2) / (maker.oilUnit.includes("gal") ? (inLitres[maker.oilUnit] ?? 1) : 1),
          1,
        ),
      ],
      ["weighed", dose((acid + reaction) * (1 + chance.between(-0.01, 0.01, 3)))],
      ["litresMade", round(amount * chance.between(0.88, 0.98, 3), 0)],
      ["route", chance.of(["base", "base", "acid first"])],
      ["note", chance.of(["", "", "dark", "slow to settle", "smelt of fish"])],
      ["rough", round(mean + chance.between(-0.5, 0.6, 1), 1)],
      ["target", chance.of([2, 2.5, 3])],
      ["price", chance.between(5, 60, 2)],
      ["time", chance.whole(1, 24)],
      ["colour", chance.of(["brown", "amber", "dark", "pale"])],
      ["glycerol", round(amount * chance.between(0.12, 0.2, 3), 0)],
      ["waterContent", chance.whole(300, 1500)],
      ["soap", chance.whole(200, 2500)],
      ["running total", litres * (at + 1)],
    ]);
    return Object.assign(row, { titres });
  });
}
