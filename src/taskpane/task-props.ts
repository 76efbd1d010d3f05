/** What every task of the pane is given. */
import type { Host } from "../sheet/port";
import type { TaskMemory } from "./drafts/task-memory";
import type { DraftStore } from "./titrate/drafts/store";

export const machineClock = (): Date => new Date();

export interface TaskProps {
  readonly host: Host;
  readonly drafts: DraftStore;
  /** Of the workbook that is open, as the drafts are. */
  readonly memory: TaskMemory;
  /** The same beside every workbook. */
  readonly learned: TaskMemory;
  /** As the browser or the spreadsheet program says it: "en-GB", "de-DE". */
  readonly locale: string;
  /** The time now; the machine's own where it is left out. */
  readonly clock?: () => Date;
}
