/** The file that the page opens with; it is fetched when it is first saved. */
export const sampleFile = "logbook.xlsx";

/** What the bar calls it. */
export const demonstration = "Saltmarsh Ferries, a demonstration logbook";

/** Undefined where it cannot be fetched. */
export async function sampleBytes(): Promise<Uint8Array | undefined> {
  const answer = await fetch(sampleFile).catch(() => undefined);
  return answer?.ok ? new Uint8Array(await answer.arrayBuffer()) : undefined;
}
