/** The port that a person wants: a number, or the sentence that says why it cannot be one. */
export function portFrom(wanted: string): number | string {
  const port = Number(wanted);
  if (/^\d+$/.test(wanted) && port >= 1 && port <= 65_535) return port;
  return `PORT is "${wanted}": give a number from 1 to 65535.`;
}
