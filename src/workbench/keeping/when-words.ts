/** The day and the time at which something was kept, and how much it is, for a reader. */
const form = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "long",
  year: "numeric",
  hour: "2-digit",
  minute: "2-digit",
});

/** @param time milliseconds since 1970 */
export const timeWords = (time: number): string =>
  // beyond the calendar, in what was tampered with
  Math.abs(time) <= 8.64e15 ? form.format(time) : "an unknown day";

export function sizeWords(bytes: number): string {
  if (bytes < 1_000_000) return `${String(Math.max(1, Math.round(bytes / 1_000)))} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}
