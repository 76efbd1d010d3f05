/**
 * A host whose events wait while nobody sees the pane: what happened meanwhile is told once, each kind of
 * event, when it is seen again. Handlers of the spreadsheet program go on behind a pane that is hidden.
 */
import type { Event, Host } from "../port";

export interface Showing {
  isShown(): boolean;
  /** Calls back each time it becomes shown, until the returned function is called. */
  watch(shown: () => void): () => void;
}

function watching(host: Host, showing: Showing, heard: (event: Event) => void): () => void {
  const missed = new Set<Event["event"]>();
  const stops = [
    host.watch(({ event }) => {
      if (showing.isShown()) heard({ event });
      else missed.add(event);
    }),
    showing.watch(() => {
      const all = [...missed];
      missed.clear();
      for (const event of all) heard({ event });
    }),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}

export const resting = (host: Host, showing: Showing): Host => ({
  capabilities: () => host.capabilities(),
  read: (questions) => host.read(questions),
  write: (label, steps) => host.write(label, steps),
  watch: (heard) => watching(host, showing, heard),
  fileBytes: () => host.fileBytes(),
  openFile: (bytes) => host.openFile(bytes),
});
