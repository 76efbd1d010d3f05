/** The lists that more than one task asks by: base, unit, kind of oil, a lot's stage. */
import { baseChoices } from "./bases";
import { oilChoices } from "./oils";
import { pick, type PickFact } from "./pick-facts";
import { unitWords } from "./units";

type More = Parameters<typeof pick>[4];

const named = <Word extends string>(choices: readonly (readonly [Word, string])[]) =>
  Object.fromEntries(choices) as Record<Word, string>;

export const basePick = (more?: More) => pick("list", "Base", named(baseChoices), "KOH", more);

export const unitPick = (more?: More) => pick("list", "Unit", unitWords, "l", more);

/** "" for an oil that is not in the list. */
export const oilPick = (more?: More): PickFact =>
  pick("list", "Kind of oil", named(oilChoices), "used cooking oil", more);
