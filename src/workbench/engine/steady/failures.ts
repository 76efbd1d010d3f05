/** What the embedded engine could not do since the workbook was opened: formulas, and whole rounds. */
type Listener = () => void;

export class Failures {
  private failed = 0;
  /** A round is going on: what is worked out now are cells. */
  isInRound = false;
  private readonly listeners = new Set<Listener>();

  /** How many times a formula failed: each of them shows an error in its own cell. */
  get formulas(): number {
    return this.failed;
  }

  formula(): void {
    this.failed += 1;
  }

  /** Called when a round of working out ended before its end: what the cells show may be old. */
  onStop(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  stopped(): void {
    for (const listener of this.listeners) listener();
  }

  /** Another workbook is open now. */
  forget(): void {
    this.failed = 0;
  }
}
