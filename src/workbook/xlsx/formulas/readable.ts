/**
 * Texts of files that are looked into as formulas. Longer ones than any formula are not, nor those with
 * so many quotation marks that reading them would take its time: no sound file holds either.
 */
const longest = 2 * 8192;
const mostWork = 1_000_000;

export function isReadable(text: string): boolean {
  if (text.length > longest) return false;
  let marks = 0;
  for (let at = text.indexOf("'"); at >= 0; at = text.indexOf("'", at + 1)) marks += 1;
  return marks * text.length <= mostWork;
}
