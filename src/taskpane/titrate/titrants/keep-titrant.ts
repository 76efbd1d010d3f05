/** The titrant of a titration as a row of Titrants: freshly weighed, checked against KHP, or as labelled. */
import type { TitrantRecord } from "../../../workbook/record/titrant-record";
import { neutralisedWord } from "../../../core/titration/neutralised";
import { daysBetween, sheetDay } from "../../widgets/day";
import type { Seen } from "../nudges/nudge";

/** What a row still wants, in a sentence each. Empty: it can be kept. */
export function wantsOfKeeping({ draft, working, today }: Seen): string[] {
  const { bottle, checkedOn } = draft.words;
  const days = daysBetween(checkedOn, today);
  return [
    ...(working.strength === undefined ? ["Fill in its strength."] : []),
    ...(bottle.trim() === "" ? ["Fill in Bottle."] : []),
    ...(days === undefined ? ["Fill in the day it was made or checked."] : []),
    ...(days !== undefined && days < 0 ? ["The day it was checked is in the future."] : []),
  ];
}

/** What the row has no column for. */
function noteOf({ working }: Seen, isOfPhthalate: boolean): string {
  if (isOfPhthalate) return "Titre 1 is net: its blank is taken off already.";
  return working.strength?.isAtMost ? "Lye's assay unknown: strength as if it were pure." : "";
}

/** @returns undefined while something is missing, and for one that came out of Titrants */
export function titrantRecordOf(seen: Seen): TitrantRecord | undefined {
  const { draft, figures, working } = seen;
  const { strength } = working;
  const { way, base } = draft.picked;
  if (strength === undefined || way === "kept" || wantsOfKeeping(seen).length > 0) return undefined;
  const mass = figures.value("phthalateMass");
  const titre = figures.value("phthalateTitre");
  const phthalate = way === "phthalate" && mass && titre ? [{ mass, titre }] : [];
  const isOfPhthalate = phthalate.length > 0;
  return {
    date: sheetDay(draft.words.checkedOn),
    titrant: draft.words.bottle.trim(),
    base,
    howKnown: strength.setBy,
    stated: isOfPhthalate ? undefined : strength.molarity,
    statedPercent: strength.percent,
    phthalate,
    blank: isOfPhthalate ? neutralisedWord : undefined,
    purity: isOfPhthalate ? figures.value("phthalatePurity") : undefined,
    massStep: isOfPhthalate ? figures.value("massStep") : undefined,
    titreStep: isOfPhthalate ? figures.value("titreStep") : undefined,
    note: noteOf(seen, isOfPhthalate),
  };
}
