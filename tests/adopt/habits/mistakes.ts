/** What a maker may get wrong in one row, and in which logbooks it can be. */
import type { Habit } from "./habit";

export type Planted =
  | "trade rule"
  | "blank not subtracted"
  | "blank twice"
  | "blank added"
  | "assay forgotten"
  | "assay multiplied"
  | "factor of the other base"
  | "litres as kilograms"
  | "kilograms as litres"
  | "1 mL as 1 g"
  | "slip by ten"
  | "mean of wrong titres"
  | "one titre left out"
  | "acid value as percent"
  | "stale copied dose"
  | "decimal slip"
  | "other gallon"
  | "nothing for the acid"
  | "percent as fraction"
  | "percent as molarity"
  | "another lot's acid"
  | "other amount weighed";

const isByVolume = ({ oilUnit }: Habit): boolean => oilUnit !== "kg" && oilUnit !== "lb";
const fromFfa = ({ acidFrom }: Habit): boolean =>
  acidFrom === "ffa" || acidFrom === "ffa coefficient";
/** The dose is worked out by way of the oil's mass. */
const usesMass = (habit: Habit): boolean => habit.acidFrom !== "titre";

const possible: Readonly<Record<Planted, (habit: Habit) => boolean>> = {
  // The fraction has to come from somewhere; 26 times too little of the acid's part.
  "trade rule": (habit) => habit.hasFfa || fromFfa(habit),
  "blank not subtracted": ({ blank }) => !["zero", "word", "neutralised"].includes(blank),
  "blank twice": ({ blank, hasNet }) => hasNet && !["zero", "word", "neutralised"].includes(blank),
  "blank added": ({ blank }) => !["zero", "word", "neutralised"].includes(blank),
  "assay forgotten": ({ base, charge }) => base === "KOH" && !charge.isAsWeighed,
  "assay multiplied": ({ base, charge }) => base === "KOH" && !charge.isAsWeighed,
  "factor of the other base": ({ base }) => base !== "NaOCH3",
  "litres as kilograms": (habit) => isByVolume(habit) && usesMass(habit),
  "kilograms as litres": ({ charge, oilUnit, hasOilMass }) =>
    charge.per === "g/L" && (oilUnit === "kg" || oilUnit === "lb" || hasOilMass),
  "1 mL as 1 g": (habit) => habit.sample.by === "mL" && usesMass(habit),
  "slip by ten": (habit) => fromFfa(habit) && habit.hasFfa,
  "mean of wrong titres": ({ titres, hasMean, hasNet, hasFfa, hasAcidValue }) =>
    titres > 1 && (hasMean || hasNet || hasFfa || hasAcidValue),
  "one titre left out": ({ titres, sample, hasMean, hasNet, hasFfa, hasAcidValue }) =>
    titres === 3 && !sample.isOwn && (hasMean || hasNet || hasFfa || hasAcidValue),
  "acid value as percent": (habit) => fromFfa(habit) && habit.hasFfa,
  "stale copied dose": () => true,
  "decimal slip": () => true,
  "other gallon": ({ oilUnit }) => oilUnit === "US gal" || oilUnit === "imp gal",
  "nothing for the acid": () => true,
  "percent as fraction": (habit) => fromFfa(habit) && habit.sheets === 1,
  "percent as molarity": (habit) => habit.titrant.unit !== "mol/L" && usesMass(habit),
  "another lot's acid": ({ sheets, copiesAcid }) => sheets === 2 && copiesAcid,
  "other amount weighed": ({ isWeighedWritten }) => isWeighedWritten,
};

export const plantable = (habit: Habit): Planted[] =>
  (Object.keys(possible) as Planted[]).filter((each) => possible[each](habit));
