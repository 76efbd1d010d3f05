/**
 * Texts that are looked into as formulas. Not so are texts longer than any formula, those with a word
 * longer than any name, figure or path, and those with so many quotation marks and brackets that
 * reading them would take its time: no sound file holds any of them.
 */
import { sheetLimits } from "../spreadsheet-limits";

const longest = 2 * sheetLimits.formula;
const longestWord = 1024;
const mostWork = 4_000_000;

/** What words end at. */
const isBetween = new Set([...' \t\r\n"(),;{}+-*/^&=<>'].map((mark) => mark.charCodeAt(0)));
/** What may reach to the end of the text. */
const isOpening = new Set([..."'["].map((mark) => mark.charCodeAt(0)));

export function isReadable(text: string): boolean {
  if (text.length > longest) return false;
  let word = 0;
  let openings = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    word = isBetween.has(code) ? 0 : word + 1;
    if (word > longestWord) return false;
    if (isOpening.has(code)) openings += 1;
  }
  return openings * text.length <= mostWork;
}

/** Said of a formula that no program reads as it stands. */
export const unreadable = "It cannot be read.";
