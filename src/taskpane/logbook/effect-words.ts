/** What a wrong figure did to the dose of its row, in words. */
import type { DoseState, Finding } from "../../adopt/recheck/reporting/finding";

type Effect = NonNullable<Finding["effect"]>;

const rounded = (value: number): string => {
  const places = Math.abs(value) < 1 ? 2 : Math.abs(value) < 20 ? 1 : 0;
  return Math.abs(value).toFixed(places);
};

/** A change smaller than this does nothing at the vessel. */
const leastGrams = 0.5;

/** Before what a mistake does to a dose, where the row's own dose was not worked out. */
const ifUsed: Readonly<Record<DoseState, string>> = {
  agrees: "",
  differs: "",
  unchecked: "The dose of this row was not checked. If you had used it: ",
  none: "If you had used it: ",
};

const withoutEffect: Readonly<Record<DoseState, string>> = {
  agrees: "The dose is not affected.",
  differs: "By itself it changes the dose by less than 0.5 g.",
  unchecked: "The dose of this row was not checked.",
  none: "No dose stands in this row: what it does to one is not known.",
};

const tooMuch = (grams: number): string =>
  `${rounded(grams)} g too ${grams < 0 ? "little" : "much"} lye`;

const allTogether = "All mistakes of this row together: ";

/** What one of several mistakes makes of what the row is off: the parts add up to it. */
function ofItWords({ together }: Effect): string {
  if (together?.ofIt === undefined) return "";
  return Math.abs(together.ofIt) < leastGrams
    ? " Nothing of it is by this one."
    : ` Of it by this one: ${tooMuch(together.ofIt)}.`;
}

/** What several mistakes undo of each other. */
function littleWords(effect: Effect, dose: DoseState): string {
  const ofIt = effect.together?.ofIt ?? 0;
  return Math.abs(ofIt) < leastGrams
    ? withoutEffect[dose]
    : `${allTogether}less than 0.5 g of lye.${ofItWords(effect)}`;
}

/** "329 g too little lye: 96 % of the acid (5.1 mol) was not neutralised"; what not to do about it is said once, above them all */
export function effectWords({ effect, dose, oddInput }: Finding): string {
  if (oddInput !== undefined) return oddInput;
  if (!effect) return dose === "agrees" || dose === "differs" ? unknownEffect : withoutEffect[dose];
  const { grams, acidLeftMoles, acidLeftPercent } = effect;
  if (Math.abs(grams) < leastGrams) return littleWords(effect, dose);
  const of = effect.of === "kilogram" ? " for each kilogram of oil" : "";
  const before = effect.together ? allTogether : ifUsed[dose];
  const much = `${before}${tooMuch(grams)}${of}`;
  const left =
    acidLeftPercent < 0.5
      ? ""
      : `: ${acidLeftPercent.toFixed(0)} % of the acid (${rounded(acidLeftMoles)} mol) was not neutralised`;
  return `${much}${left}.${ofItWords(effect)}`;
}

const unknownEffect = "What it does to the dose is not known.";
