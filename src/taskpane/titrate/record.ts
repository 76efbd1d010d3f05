/** The draft as a row of the logbook. */
import { neutralisedWord } from "../../core/titration/neutralised";
import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import type { OmittedReading, TitrationRecord } from "../../workbook/record/titration-record";
import { sheetDay } from "../widgets/day";
import { type Draft, mostReadings } from "./draft";
import { temperatureWords } from "../fields/fahrenheit";
import { asInCell } from "../fields/number-figures";
import type { Seen } from "./nudges/nudge";
import { keepsFromRecording, wanted } from "./progress";
import { standingBlanks, usedOf } from "./readings";
import { indicatorOf } from "./probe-put";
import { rowWordIds } from "./titration";
import { hasOwnMasses, massStepOf, oneMass } from "./sample";
import { isUsedAllTheSame } from "./worth";

/** A list with a place for each column, null where nothing stands. */
const places = <T>(count: number, at: (index: number) => T | null): (T | null)[] =>
  Array.from({ length: count }, (_, index) => at(index));

const omittedOf = (draft: Draft): OmittedReading[] =>
  draft.titres.flatMap((reading, index) =>
    reading.omitted === undefined
      ? []
      : [{ number: index + 1, titre: usedOf(reading), reason: reading.omitted }],
  );

/** Those that have a column, as written. */
const wordsOf = ({ words }: Draft) =>
  Object.fromEntries(rowWordIds.map((id) => [id, words[id].trim()])) as Record<
    (typeof rowWordIds)[number],
    string
  >;

/** What the row has no column for goes into its note. */
function noteOf(seen: Seen): string {
  const { draft, figures, working } = seen;
  const { picked, typed, words } = draft;
  const said: string[] = [];
  if (words.note.trim() !== "") said.push(words.note.trim());
  if (picked.sample === "by volume") {
    const off = figures.value("samplePercent");
    const warm = figures.value("temperature");
    said.push(
      `Sample by volume: ${typed.volume ?? ""} mL${warm ? ` at ${temperatureWords(typed.temperature, warm)}` : ""}` +
        (off ? `, ± ${off.toString()} %; "Weighed to" is the balance step worth as much.` : "."),
    );
  }
  if (figures.value("density")) said.push(`Density at 20 C: ${typed.density ?? ""} kg/L.`);
  if (working.strength?.isAtMost) {
    said.push("Lye's assay unknown: strength, acid value and % FFA are as if it were pure.");
  }
  if (isUsedAllTheSame(seen)) said.push("Used all the same.");
  return said.join(" ");
}

/** @returns undefined while something the row needs is missing */
export function recordOf(seen: Seen): TitrationRecord | undefined {
  const { draft, figures, working } = seen;
  const { strength } = working;
  const mass = oneMass(draft, figures);
  if (strength === undefined || isProblem(mass)) return undefined;
  if (keepsFromRecording(wanted(seen)).length > 0) return undefined;

  const { titres } = mostReadings;
  const at = (index: number) => draft.titres[index];
  const own = (index: number) => {
    const reading = at(index);
    if (reading?.mass === undefined || reading.omitted !== undefined) return null;
    return asInCell("g", exact(reading.mass));
  };
  const masses = hasOwnMasses(draft) ? places(titres, own) : mass;
  if (masses === undefined) return undefined;
  return {
    ...wordsOf(draft),
    date: sheetDay(draft.begunOn),
    lot: draft.words.lot.trim(),
    stage: draft.picked.stage,
    oil: draft.picked.oil,
    titrantBase: draft.picked.base,
    molarity: strength.molarity,
    strengthSetBy: strength.setBy,
    indicator: indicatorOf(draft),
    secondsHeld: draft.picked.seconds === "" ? undefined : Number(draft.picked.seconds),
    titres: places(titres, (index) => {
      const reading = at(index);
      return reading === undefined || reading.omitted !== undefined ? null : usedOf(reading);
    }),
    blanks: draft.picked.blank === neutralisedWord ? neutralisedWord : standingBlanks(draft),
    masses,
    titreStep: figures.value("titreStep"),
    massStep: massStepOf(draft, figures),
    isByVolume: draft.picked.sample === "by volume",
    titrantPercent: strength.percent,
    burettePercent: figures.value("burettePercent"),
    usual: working.usual,
    omitted: omittedOf(draft),
    note: noteOf(seen),
  };
}
