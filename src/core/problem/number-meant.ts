/**
 * A text where a number belongs is often a number all the same: with a decimal comma, with its unit, or
 * kept as text by the program it came from. The cell looks right then, so the sentence has to say why.
 */
const written = /^([+-]?\d+)(?:([.,])(\d+))?(?:\s*([^\d\s][^\d]*))?$/u;
/** Longer texts are not figures; nobody reads them to their end. */
const longest = 40;

/**
 * What to do with a text that looks like a number, for the end of a sentence; "" where it does not.
 * @example numberMeant("2,45") // "write 2.45"
 * @example numberMeant("2.45 mL") // "type the number alone, 2.45"
 * @example numberMeant("2.45") // "it is kept as text, so type it again"
 */
export function numberMeant(text: string): string {
  const trimmed = text.trim();
  const [, whole, mark, decimals, rest] =
    trimmed.length > longest ? [] : (written.exec(trimmed) ?? []);
  if (whole === undefined) return "";
  const figure = decimals === undefined ? whole : `${whole}.${decimals}`;
  // 1,234 may be a thousand and more, or one and a bit
  const isEither = mark === "," && decimals?.length === 3;
  if (isEither) return `write ${whole}${decimals} or ${figure}`;
  if (rest !== undefined) return `type the number alone, ${figure}`;
  return mark === "," ? `write ${figure}` : "it is kept as text, so type it again";
}
