/**
 * The sentences of the verdict, around figures as text: the plain-formula twin says them too. First
 * what holds and what to do, in plain words; figures after. Choosing the best two of three is never
 * offered: it is worse than keeping all three.
 */
import type { Times } from "./decimal-slip";

/** Counts up to this many are words. */
const counts = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** @example countWord(3) // "three"; countWord(11) // "11" */
export const countWord = (count: number): string => counts[count - 1] ?? String(count);
export const countWords: readonly string[] = counts;

const slipWords: Record<Times, string> = {
  "10": "ten times the others",
  "100": "a hundred times the others",
  "0.1": "a tenth of the others",
  "0.01": "a hundredth of the others",
};
export const slipWord = (times: Times): string => slipWords[times];

const beforeDose = "titrate again before any dose";

/** Of readings that agree, and of no others. */
export const useWords = ": use ";

export const verdictWords = {
  one: (reading: string): string =>
    `One reading, ${reading} mL: nothing to compare it with. Titrate at least once more.`,
  both: "Both",
  all: (count: string): string => `All ${count}`,
  equal: (all: string, reading: string): string =>
    `${all} readings are ${reading} mL${useWords}it. Equal readings show no scatter; they do not prove that there is none.`,
  agree: (count: string, within: string, mean: string): string =>
    `The ${count} agree within ${within} mL${useWords}${mean} mL.`,
  agreeOnMasses: (count: string, within: string): string =>
    `The ${count} agree within ${within} mL, each judged on its own mass${useWords}all of them.`,
  /** Behind agreement by the record (F test at 95 %). */
  more: "Today scatters more than usual: only today’s readings are counted in the ±.",
  agreeToTheDigit: (count: string): string =>
    `The ${count} agree to the last digit read, each judged on its own mass${useWords}all of them.`,
  slip: (reading: string, times: string, perhaps: string): string =>
    `${reading} mL is about ${times}: was it ${perhaps} mL? Correct it if your notes say so; otherwise titrate again.`,
  lone: (reading: string, distance: string, others: string): string =>
    `${reading} mL is ${distance} mL away from the ${others} that agree. Titrate again`,
  /** Where a reading may be left out: it was flagged, and three or more are left. */
  omit: ", or leave it out and write why.",
  end: ".",
  apart: (count: string, apart: string): string =>
    `The ${count} lie ${apart} mL apart, and no one can say which is off: ${beforeDose}`,
  othersApart: (reading: string, others: string, apart: string): string =>
    `${reading} mL lies apart, and the other ${others} lie ${apart} mL apart: ${beforeDose}`,
  byRecord: (allowed: string): string =>
    ` (your usual scatter explains ${allowed} mL from the mean).`,
  byDrops: (allowed: string): string => ` (up to ${allowed} mL apart counts as agreement).`,
};
