/** Which columns a logbook has, by what it is for. */
import type { Chance } from "../habits/chance";
import type { Meaning } from "./words/role-words";

const some = (chance: Chance, share: number, ...meanings: Meaning[]): Meaning[] =>
  meanings.filter(() => chance.yes(share));

/** What a maker titrates. */
const titration = (chance: Chance): Meaning[] => [
  ...some(chance, 0.25, "number"),
  "date",
  "lot",
  ...some(chance, 0.25, "oil", "operator"),
  ...some(chance, 0.2, "titrantBase", "indicator"),
  ...some(chance, 0.6, "molarity", "strength"),
  "sampleMass",
  "sampleVolume",
  "titre",
  ...some(chance, 0.75, "blank"),
  ...some(chance, 0.35, "meanTitre"),
  ...some(chance, 0.35, "correctedTitre"),
  ...some(chance, 0.35, "acidValue"),
  ...some(chance, 0.7, "ffa"),
];

/** What a maker doses. */
const batch = (chance: Chance): Meaning[] => [
  "oilAmount",
  ...some(chance, 0.2, "density"),
  ...some(chance, 0.2, "temperature"),
  ...some(chance, 0.3, "base"),
  ...some(chance, 0.3, "assay"),
  ...some(chance, 0.5, "baseCharge"),
  ...(chance.yes(0.4) ? (["acidDose", "reactionDose"] as const) : []),
  ...some(chance, 0.2, "catalystRate"),
  "catalyst",
  ...some(chance, 0.15, "weighed"),
  ...some(chance, 0.7, "methanol"),
  ...some(chance, 0.4, "litresMade"),
];

const besides = (chance: Chance, share: number): Meaning[] =>
  some(
    chance,
    share,
    "rough",
    "target",
    "price",
    "time",
    "colour",
    "glycerol",
    "waterContent",
    "soap",
    "running total",
  );

/** One table with both, as most makers keep it, or one of the two. */
export function meaningsOf(chance: Chance, distractors: number): Meaning[] {
  const kind = chance.of(["both", "both", "titration", "batches"] as const);
  const more = besides(chance, distractors);
  const note: Meaning[] = some(chance, 0.6, "note");
  if (kind === "both") return [...titration(chance), ...batch(chance), ...more, ...note];
  if (kind === "titration") return [...titration(chance), ...more, ...note];
  return [
    ...some(chance, 0.8, "batch"),
    "date",
    ...some(chance, 0.8, "lot"),
    ...some(chance, 0.5, "ffa"),
    ...batch(chance),
    ...more,
    ...note,
  ];
}
