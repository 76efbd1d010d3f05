/**
 * Answers about formulas, remembered: a column has its formula in every row, and a file is read again
 * each time it is written. All are forgotten once they are many.
 */
export function remembered<T extends object | string>(
  work: (text: string) => T,
  /** Characters of the texts that are kept. */
  most = 200_000,
): (text: string) => T {
  const known = new Map<string, T>();
  let room = most;
  return (text) => {
    const found = known.get(text);
    if (found !== undefined) return found;
    const made = work(text);
    room -= text.length;
    if (room < 0) {
      known.clear();
      room = most;
    } else known.set(text, made);
    return made;
  };
}
