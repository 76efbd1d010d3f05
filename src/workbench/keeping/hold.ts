/**
 * One workbook, one tab that keeps it: by the browser's own locks. A browser without them has no hold,
 * and every tab keeps what it has open.
 */

/** A page that is loaded again gives its lock back while the new one begins, ms. */
const patience = 400;

const named = (id: string): string => `titrebook/workbook/${id}`;

export class Hold {
  private release: (() => void) | undefined;
  private held = "";

  constructor(private readonly locks: LockManager | undefined = globalThis.navigator?.locks) {}

  /** The one that was held before is let go. False when another tab has it. */
  take(id: string): Promise<boolean> {
    const { locks } = this;
    if (locks === undefined || this.held === id) return Promise.resolve(true);
    this.letGo();
    return new Promise((taken) => {
      const given = () =>
        new Promise<void>((done) => {
          this.held = id;
          this.release = done;
          taken(true);
        });
      locks
        .request(named(id), { signal: AbortSignal.timeout(patience) }, given)
        .catch(() => taken(false));
    });
  }

  letGo(): void {
    this.release?.();
    this.release = undefined;
    this.held = "";
  }

  /** Those that some tab has, this one too. */
  async elsewhere(): Promise<ReadonlySet<string>> {
    const found = await this.locks?.query().catch(() => undefined);
    const ids = found?.held?.flatMap(({ name }) => (name === undefined ? [] : [name])) ?? [];
    return new Set(
      ids
        .filter((name) => name.startsWith(named("")) && name !== named(this.held))
        .map((name) => name.slice(named("").length)),
    );
  }
}
