/**
 * Every problem of the core, declared once: its code, the fields its sentence needs, and the sentence a
 * person reads, of 6 to 200 characters, that names the argument, what was given and what is allowed.
 */
import type { Exact } from "../exact/exact";
import { shown, shownAbove, shownBelow } from "../exact/rounding";
import { type FormulaTrouble, formulaTroubles } from "./formula-troubles";
import type { Place } from "./place";
import { quoted } from "./quoted";

const at = (place: Place | undefined): string =>
  place ? `, row ${place.row} column ${place.column},` : "";

const after = (hint: string): string => (hint === "" ? "" : `: ${hint}`);

const withUnit = (figure: string, unit: string): string => (unit ? `${figure} ${unit}` : figure);

const withArticle = (what: string): string => `${/^[aeiou]/.test(what) ? "an" : "a"} ${what}`;

const unitOf = { "acid value": "mg KOH/g", FFA: "%" } as const;

export const sentences = {
  "not-filled-in": (p: { argument: string; called: string }) =>
    `No ${p.called} yet: ${p.argument} is not filled in.`,
  "no-blank": () => "No blank yet: titrate one, or type neutralised.",
  "too-few": (p: { argument: string; called: string; given: number; needed: number }) =>
    `Not enough data yet: ${p.argument} has ${p.given} ${p.called}${p.given === 1 ? "" : "s"}, and ${p.needed} or more are needed.`,
  "not-available": (p: { argument: string; place?: Place | undefined }) =>
    `${p.argument}${at(p.place)} holds #N/A: it is not available yet.`,
  "no-repeats": () =>
    "Not enough data yet: no titration in titreSets has two readings, and one alone shows no scatter.",
  "usual-alone": (p: { given: string; missing: string }) =>
    `No usual scatter yet: ${p.given} is given without ${p.missing}; USUALSCATTER and USUALFREEDOM make both.`,
  "too-many-replicates": (p: { scatter: Exact; halfWidth: Exact; most: number }) =>
    `More than ${p.most} titrations would be needed for ±${shown(p.halfWidth)} mL at a scatter of ${shown(p.scatter)} mL: find what scatters them first.`,
  "not-a-number": (p: {
    argument: string;
    given: string;
    /** What to type instead, where the text looks like a number; else "". */
    hint: string;
    /** The word that may stand there in place of a figure. */
    orWord?: string;
    place?: Place | undefined;
  }) =>
    p.orWord !== undefined
      ? `${p.argument}${at(p.place)} must be figures in mL or the word ${p.orWord}, and ${p.given} is neither${after(p.hint)}.`
      : `${p.argument}${at(p.place)} must be a number, and ${p.given} is not one${after(p.hint)}.`,
  "error-cell": (p: { argument: string; error: string; place?: Place | undefined }) =>
    `${p.argument}${at(p.place)} holds ${p.error}: put that cell right first.`,
  "not-one-cell": (p: { argument: string; rows: number; columns: number }) =>
    `${p.argument} must be one cell, and a range of ${p.rows} by ${p.columns} cells was given.`,
  "out-of-range": (p: {
    argument: string;
    given: Exact;
    unit: string;
    allowed: string;
    hint: string;
    place?: Place | undefined;
  }) =>
    `${p.argument}${at(p.place)} is ${withUnit(shown(p.given), p.unit)}; allowed is ${p.allowed}${p.hint ? ` (${p.hint})` : ""}.`,
  "not-whole": (p: { argument: string; given: Exact }) =>
    `${p.argument} is ${shown(p.given)}; it must be a whole number.`,
  "one-day": (p: { day: Exact }) =>
    `dates holds one day alone, ${shown(p.day)}: a line needs strengths of two days or more.`,
  "no-strength-left": (p: { strength: Exact }) =>
    `The line comes to ${shown(p.strength.toSignificantDigits(4))} mol/L on that day, which cannot be: ask for a day nearer to the dates.`,
  "unknown-word": (p: { argument: string; given: string; allowed: string }) =>
    `${p.argument} is ${p.given}; allowed is ${p.allowed}.`,
  "which-gallon": (p: { argument: string }) =>
    `${p.argument}: which gallon? Write us_gal (3.785 L) or uk_gal (4.546 L).`,
  "neutralised-and-figure": () =>
    "blanks holds the word neutralised beside a figure: give the blank titres, or the word, not both.",
  "titre-below-blank": (p: { titre: Exact; blank: Exact }) =>
    `A titre of ${shown(p.titre)} mL is below the blank of ${shown(p.blank)} mL: check both, and that they stand in the right cells.`,
  "titre-equals-blank": (p: { titre: Exact; blank: Exact; sought?: string }) =>
    `A titre of ${shown(p.titre)} mL equals the blank of ${shown(p.blank)} mL, so the ${p.sought ?? "acid"} is below what this sample can show: take a larger sample.`,
  "too-much-acid": (p: { quantity: "acid value" | "FFA"; given: Exact; limit: Exact }) =>
    `The ${p.quantity} comes to ${withUnit(shownAbove(p.given, p.limit), unitOf[p.quantity])}, above ${shown(p.limit)}: check sample mass and titrant strength.`,
  "acid-above-limit": (p: { ffaPercent: Exact; limitPercent: Exact }) =>
    `${shownAbove(p.ffaPercent, p.limitPercent)} % FFA is above the limit of ${shown(p.limitPercent)} %: see ROUTE; give a higher limit to go on.`,
  unpaired: (p: { filled: string; missing: string; place: Place; advice: string }) =>
    `Row ${p.place.row} column ${p.place.column} has ${withArticle(p.filled)} but no ${p.missing}: ${p.advice}.`,
  "shapes-differ": (p: { first: string; second: string }) =>
    `${p.first} and ${p.second} must be ranges of the same shape.`,
  "rows-differ": (p: { first: string; second: string }) =>
    `${p.first} and ${p.second} must have the same number of rows: one row for each titration.`,
  "solid-fat": (p: { oil: string; lowest: Exact; temperature: Exact }) =>
    `${p.oil} is solid at ${shownBelow(p.temperature, p.lowest)} C: weigh it, or warm it to ${shown(p.lowest)} C and give the temperature.`,
  "too-much-oil": (p: { given: Exact; limit: Exact }) =>
    `amount comes to ${shownAbove(p.given, p.limit)} kg of oil; allowed is up to ${shown(p.limit)} kg.`,
  "equal-lots": (p: { acidValue: Exact }) =>
    `Both lots have an acid value of ${shown(p.acidValue)}: no blend of them changes it.`,
  "target-outside": (p: { target: Exact; low: Exact; high: Exact }) =>
    `targetAcidValue is ${shown(p.target)}; lots of ${shown(p.low)} and ${shown(p.high)} blend only to values between those two.`,
  "no-triglyceride-left": (p: { acidValue: Exact; limit: Exact }) =>
    `acidValue is ${shown(p.acidValue)}; above ${shown(p.limit.toSignificantDigits(4))} no triglyceride is left to react with methanol.`,
  "too-much": (p: { called: string; given: Exact; unit: string; limit: Exact }) =>
    `The ${p.called} comes to ${shownAbove(p.given, p.limit)} ${p.unit}, above ${shown(p.limit)}: check every figure and its unit.`,
  "titre-not-below-blank": (p: { titre: Exact; blank: Exact }) =>
    `A titre of ${shown(p.titre)} mL is not below a blank of ${shown(p.blank)} mL: glycerol takes less than the blank does; check which is which.`,
  "free-above-total": (p: { free: Exact; total: Exact }) =>
    `freeGlycerol is ${shown(p.free)} % and totalGlycerol ${shown(p.total)} %: the total counts the free as well, so it cannot be less.`,
  "more-than-bound": (p: { left: Exact; bound: Exact }) =>
    `totalGlycerol less freeGlycerol is ${shownAbove(p.left, p.bound)} %; oil that did not react at all holds ${shown(p.bound.toSignificantDigits(4))} %: check both.`,
  "nothing-in-dish": (p: { argument: string; given: Exact; dish: Exact }) =>
    `${p.argument} is ${shown(p.given)} g and the dish alone ${shown(p.dish)} g: weigh dish and oil together, and check which is which.`,
  "heavier-dried": (p: { before: Exact; after: Exact }) =>
    `massAfter is ${shown(p.after)} g and massBefore ${shown(p.before)} g: nothing gets heavier by drying; let the dish cool, and check which is which.`,
  "nothing-lost": (p: { after: Exact }) =>
    `massAfter is ${shown(p.after)} g, as massBefore: the loss is below what this scale shows; take more oil or a finer scale.`,
  "volumes-not-rising": (p: { before: Exact; after: Exact }) =>
    `volumes must rise from reading to reading, and ${shown(p.after)} mL comes after ${shown(p.before)} mL.`,
  "too-few-points": (p: { given: number; needed: number }) =>
    `${p.given} readings show no end point, ${p.needed} or more may: add readings before the steep part and past it.`,
  "flat-curve": () =>
    "All readings are the same, so they show no end point: titrate on, and check that the probe is on.",
  "end-at-edge": (p: { side: "before" | "past"; from: Exact; to: Exact }) =>
    `The steepest step, ${shown(p.from)} to ${shown(p.to)} mL, needs two steps on each side of it: add readings ${p.side} it.`,
  "too-large-to-show": () =>
    "The result is too large for a cell: check the units and the size of each argument.",
  "broken-formula": (p: { trouble: FormulaTrouble; at: number; found: string }) =>
    `The formula cannot be read at character ${p.at}${p.found ? `, ${quoted(p.found)}` : ""}: ${formulaTroubles[p.trouble]}.`,
  "unknown-function": (p: { given: string }) =>
    `There is no function ${quoted(p.given)}: check its spelling.`,
  "too-many-arguments": (p: { called: string; given: number; most: number }) =>
    `${p.called} takes ${p.most} arguments at most, and ${p.given} were given.`,
  "no-call": (p: { given: string }) => `${quoted(p.given)} calls no TITRE function.`,
  "no-figure": (p: { given: string }) =>
    `${quoted(p.given)} has no value here: write the figure in its place.`,
} satisfies Readonly<Record<string, (fields: never) => string>>;

type Sentences = typeof sentences;

export type ProblemCode = keyof Sentences;

/** A code with what its sentence asks for. */
export type ProblemFields = {
  [Code in ProblemCode]: { readonly code: Code } & (Parameters<Sentences[Code]> extends [
    infer Fields,
  ]
    ? Fields
    : unknown);
}[ProblemCode];
