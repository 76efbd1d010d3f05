/** A figure with the digits of the one it is compared with, but never fewer than three that tell. */
export function shownLike(value: number, halfDigit: number): string {
  if (value === 0) return "0";
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const byDigit = halfDigit > 0 ? Math.max(0, Math.round(-Math.log10(halfDigit * 2))) : 4;
  const telling = Math.max(0, 2 - magnitude);
  return value.toFixed(Math.min(6, Math.max(byDigit, telling)));
}
