/** Rows of an invented logbook: what each role would hold on one day. Plain arithmetic, doubles. */
import type { RoleId } from "../../../src/adopt/recognising/roles";

export type Row = Partial<Record<RoleId, number | string>> & { readonly titres: number[] };

const pick = <T>(from: readonly T[], random: () => number): T =>
  from[Math.floor(random() * from.length)] as T;

const round = (value: number, places: number): number => Number(value.toFixed(places));

export function makeRow(index: number, random: () => number, byVolume: boolean): Row {
  const gramsPerLitre = 1;
  const molarity = byVolume ? gramsPerLitre / 56.1053 : 0.1;
  const mass = byVolume ? 0.915 : round(9.5 + random(), 2);
  const wanted = 0.5 + random() * 3;
  const net = (wanted * 10 * mass) / (282 * molarity);
  const blank = byVolume ? 0.1 : round(0.1 + Math.floor(random() * 3) * 0.05, 2);
  const titres = [0, 1, 2].map(() => round(net + blank + (random() - 0.5) * 0.1, 2));
  const mean = titres.reduce((sum, each) => sum + each, 0) / titres.length;
  const corrected = mean - blank;
  const acidValue = (56.1 * molarity * corrected) / mass;
  const ffa = (molarity * corrected * 28.2) / mass;
  const litres = 60 + Math.floor(random() * 140);
  const kilograms = litres * 0.915;
  const acidDose = ((kilograms * acidValue) / 56.1) * 56.1053;
  const reaction = kilograms * 7.65;
  const catalyst = (acidDose + reaction) / 0.9;
  return {
    titres,
    number: index + 1,
    date: 46_000 + index * 3,
    lot: `${pick(["NQ", "SW", "TW"], random)}-${String(10 + index)}`,
    batch: `B-${String(100 + index)}`,
    oil: pick(["fryer oil", "rapeseed", "mixed fryer"], random),
    operator: pick(["Mate", "Engineer", "Deckhand"], random),
    titrantBase: "KOH",
    molarity: round(molarity, 4),
    strength: gramsPerLitre,
    blank,
    meanTitre: round(mean, 3),
    correctedTitre: round(corrected, 3),
    sampleMass: mass,
    sampleVolume: 1,
    acidValue: round(acidValue, 2),
    ffa: round(ffa, 2),
    oilAmount: litres,
    oilMass: round(kilograms, 1),
    amountUnit: "l",
    density: 0.915,
    temperature: 18 + Math.floor(random() * 12),
    base: "KOH",
    assay: 90,
    baseCharge: 7,
    acidDose: round(acidDose, 0),
    reactionDose: round(reaction, 0),
    catalyst: round(catalyst, 0),
    catalystRate: round(catalyst / litres, 2),
    methanol: round(litres * 0.22, 1),
    weighed: round(catalyst / 5, 0) * 5,
    litresMade: litres - 4,
    note: random() < 0.4 ? pick(["dark", "smelt of fish", "slow to settle", "fine"], random) : "",
  };
}
