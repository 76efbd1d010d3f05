/**
 * Where the unexpected goes: what should not have happened is told to the console, for whoever looks
 * into it. A sentence for the person at the bench is said by whoever asks for it here.
 */
export function unexpected(what: unknown): void {
  // eslint-disable-next-line no-console -- the one place that does
  console.error("Titrebook: unexpected", what);
}
