/** The selected cell as it goes: read at each event, and again while its function has not answered. */
import type { Host } from "../../sheet/port";
import { readSelection } from "./read-selection";
import type { ShownCell } from "./shown-cell";

/** Milliseconds between two looks at a cell that is busy, and how many looks. */
const again = 750;
const mostLooks = 12;

const isBusy = (cell: ShownCell | undefined): boolean => cell?.error === "#BUSY!";

/** @returns what ends it */
export function followSelection(
  host: Host,
  told: (cell: ShownCell | undefined) => void,
): () => void {
  let latest = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const follow = async (looks: number): Promise<void> => {
    const turn = ++latest;
    clearTimeout(timer);
    const cell = await readSelection(host);
    // a slow answer about an earlier cell must not replace a later one
    if (turn !== latest) return;
    told(cell);
    if (isBusy(cell) && looks < mostLooks) timer = setTimeout(() => void follow(looks + 1), again);
  };
  void follow(1);
  const stop = host.watch(() => void follow(1));
  return () => {
    latest += 1;
    clearTimeout(timer);
    stop();
  };
}
