/**
 * Times by turns: each of the pieces compared runs once a round, so that what else the machine does
 * falls on all of them alike. The smallest time of a piece is what it costs on a quiet machine. Time is
 * that of the processor, which a busy machine hardly adds to.
 */

export interface Piece {
  readonly name: string;
  readonly run: () => unknown;
}

export interface Timed {
  readonly name: string;
  /** Milliseconds, smallest of all rounds. */
  readonly quiet: number;
}

export async function byTurns(pieces: readonly Piece[], rounds: number): Promise<Timed[]> {
  const quiet = pieces.map(() => Infinity);
  for (let round = 0; round <= rounds; round += 1) {
    for (const [place, { run }] of pieces.entries()) {
      const start = process.cpuUsage();
      await run();
      const { user, system } = process.cpuUsage(start);
      // the first round warms up
      if (round > 0) quiet[place] = Math.min(quiet[place] ?? Infinity, (user + system) / 1000);
    }
  }
  return pieces.map(({ name }, place) => ({ name, quiet: quiet[place] ?? NaN }));
}

export const quietOf = (timed: readonly Timed[], name: string): number => {
  const found = timed.find((each) => each.name === name);
  if (!found) throw new Error(`nothing was timed as ${name}`);
  return found.quiet;
};
