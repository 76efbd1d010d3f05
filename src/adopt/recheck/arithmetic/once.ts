/** Worked out when it is first asked for: what nobody asks for costs nothing. */
export function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => (done ??= { value: work() }).value;
}
