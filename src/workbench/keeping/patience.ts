/** How long is waited for what may never come, ms. */

/** Somebody types in a cell: one that is left half typed must not hold up what was entered before. */
export const patienceWithTyping = 15_000;

/** A database that does not answer: what is in a file is said to be. */
export const patienceWithKeeping = 5_000;

/** Resolves when the work is done, or at the end of patience; never fails. */
export function doneWithin(patience: number, work: Promise<unknown>): Promise<void> {
  return new Promise((done) => {
    const late = setTimeout(done, patience);
    void work
      .catch(() => undefined)
      .then(() => {
        clearTimeout(late);
        done();
      });
  });
}
