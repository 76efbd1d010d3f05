/** The files before the last acts, to go back to, and those that were gone back from. */

/** Acts that can be taken back, one after another. */
const most = 20;
/** Bytes of all these files. */
const room = 200_000_000;

const sizeOf = (files: readonly Uint8Array[]): number =>
  files.reduce((sum, { length }) => sum + length, 0);

/** What is left when the oldest go for want of room. */
function lastOnes(files: readonly Uint8Array[]): readonly Uint8Array[] {
  let kept = files.slice(-most);
  while (kept.length > 1 && sizeOf(kept) > room) kept = kept.slice(1);
  return kept;
}

export class ActHistory {
  constructor(
    private readonly before: readonly Uint8Array[] = [],
    private readonly after: readonly Uint8Array[] = [],
  ) {}

  /**
   * An act was done. What somebody changed since the act before it would go with that one, all at once:
   * so nobody gets there.
   * @param from the file before it
   */
  done(from: Uint8Array, isEdited = false): ActHistory {
    return new ActHistory(isEdited ? [from] : lastOnes([...this.before, from]));
  }

  /** @param now the file as it is */
  back(now: Uint8Array): ActHistory {
    return new ActHistory(this.before.slice(0, -1), lastOnes([...this.after, now]));
  }

  forth(now: Uint8Array): ActHistory {
    return new ActHistory(lastOnes([...this.before, now]), this.after.slice(0, -1));
  }

  /** The file to go back or forth to. */
  to(where: "back" | "forth"): Uint8Array | undefined {
    return (where === "back" ? this.before : this.after).at(-1);
  }

  get counts(): { readonly back: number; readonly forth: number } {
    return { back: this.before.length, forth: this.after.length };
  }
}
